// SPDX-License-Identifier: BSL-1.0
// Pictures from the figures' data: rectangles to scale as drawings, curves over axes with uPlot.
import { useEffect, useRef } from 'preact/hooks';
import uPlot from 'uplot';

export function Picture({ figure, dark, printed }) {
  return (
    <figure class="picture">
      <figcaption>{figure.title}</figcaption>
      {figure.rectangles?.length > 0 ? <ToScale figure={figure} /> : <Curves figure={figure} dark={dark} printed={printed} />}
    </figure>
  );
}

/** Rectangles in metres. Water and its rise carry their height, where there is room for it. */
function ToScale({ figure }) {
  const all = figure.rectangles;
  const marks = figure.marks ?? [];
  const left = Math.min(...all.map((r) => r.left));
  const right = Math.max(...all.map((r) => r.left + r.width));
  const bottom = Math.min(...all.map((r) => r.bottom));
  const top = Math.max(...all.map((r) => r.bottom + r.height));
  if (!(right > left && top > bottom)) return null;
  const page = { width: 640, height: 260 };
  const scale = Math.min((page.width - 8) / (right - left), page.height / (top - bottom));
  const width = (right - left) * scale + 8;
  const height = (top - bottom) * scale + 34;
  const x = (r) => 4 + (r.left - left) * scale;
  const y = (r) => 26 + (top - r.bottom - r.height) * scale;
  const kinds = ['water', 'rise', 'wall', 'room'].filter((k) => all.some((r) => r.fill === k));
  const order = { water: 0, rise: 1, room: 2, wall: 3 };
  const drawn = [...all].sort((a, b) => (order[a.fill] ?? 2) - (order[b.fill] ?? 2));
  // What stands above another of the same width is named at its own edge, with room for the line below.
  const named = marks.length > 0 ? [] : all.filter((r) => (r.fill === 'water' || r.fill === 'rise') && r.width * scale > 60 && r.height > 0);
  const lines = [];
  for (const r of [...named].sort((a, b) => a.fill === b.fill ? 0 : a.fill === 'rise' ? -1 : 1)) {
    let at = y(r) + (r.fill === 'rise' ? -5 : 15);
    if (lines.some((l) => Math.abs(l.x - x(r)) < 4 && Math.abs(l.at - at) < 14)) at += 12;
    lines.push({ r, x: x(r), at });
  }
  const inWords = marks.length > 0 ? marks.map((m) => m.label).join(', ') : named.map((r) => `${r.fill} up to ${r.top_text}`).join(', ');
  return (
    <svg class="to-scale" viewBox={`0 0 ${width.toFixed(1)} ${height.toFixed(1)}`} role="img" aria-label={`${figure.title}. ${inWords}.`}>
      <defs>
        <pattern id="rise-lines" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect width="6" height="6" class="rise-ground" /><line x1="0" y1="0" x2="0" y2="6" class="rise-line" />
        </pattern>
      </defs>
      {drawn.map((r, i) => (
        <rect key={i} class={`r-${kinds.includes(r.fill) ? r.fill : 'room'}`} x={x(r).toFixed(1)} y={y(r).toFixed(1)}
          width={(r.width * scale).toFixed(1)} height={(r.height * scale).toFixed(1)} />
      ))}
      {lines.map(({ r, at }, i) => (
        <text key={`l${i}`} class={`level ${r.fill}`} x={(x(r) + 8).toFixed(1)} y={at.toFixed(1)}>{r.top_text}</text>
      ))}
      {marks.map((m, i) => {
        const at = (26 + (top - m.height) * scale).toFixed(1);
        return (
          <g key={`m${i}`} class={m.limit ? 'mark-limit' : 'mark-level'}>
            <line x1={(4 + (m.left - left) * scale).toFixed(1)} x2={(4 + (m.right - left) * scale).toFixed(1)} y1={at} y2={at} />
            <text x={(12 + (m.left - left) * scale).toFixed(1)} y={(Number(at) - 4).toFixed(1)}>{m.label}</text>
          </g>
        );
      })}
      {all.filter((r) => r.label).map((r, i) => (
        <text key={`n${i}`} class="room-name" x={(x(r) + (r.width * scale) / 2).toFixed(1)}
          y={(y(r) + (r.fill === 'room' ? r.height * scale - 8 : 15)).toFixed(1)} text-anchor="middle">{r.label}</text>
      ))}
    </svg>
  );
}

const strokes = ['--c0', '--c1', '--c2', '--c3', '--c4', '--c5'];

/** Curves over axes: their x values are brought together, since each curve has its own. */
function Curves({ figure, dark, printed }) {
  const place = useRef(null);
  const curves = figure.curves ?? [];
  useEffect(() => {
    const element = place.current;
    if (!element || curves.length === 0) return undefined;
    const style = getComputedStyle(document.documentElement);
    const colour = (name) => style.getPropertyValue(name).trim();
    const tables = [];
    const series = [{ label: withUnit(figure.x_axis) }];
    const bands = [];
    curves.forEach((c, i) => {
      const stroke = colour(strokes[i % strokes.length]);
      const order = c.x.map((_, k) => k).sort((a, b) => c.x[a] - c.x[b]);
      const table = [order.map((k) => c.x[k]), order.map((k) => c.y[k])];
      const at = series.length;
      const isPoints = c.stroke === 'points' || c.x.length === 1;
      series.push({
        label: c.label, stroke, width: isPoints ? 0 : 2, dash: c.stroke === 'dashed' ? [6, 4] : undefined, spanGaps: true,
        points: { show: isPoints, size: 8, stroke, fill: stroke, width: 1 }, paths: isPoints ? () => null : undefined,
      });
      if (c.low && c.high) {
        table.push(order.map((k) => c.high[k]), order.map((k) => c.low[k]));
        const edge = { stroke: 'transparent', width: 0, spanGaps: true, points: { show: false } };
        series.push({ ...edge, label: `${c.label}, high` }, { ...edge, label: `${c.label}, low` });
        bands.push({ series: [at + 1, at + 2], fill: `${stroke}33` });
      }
      tables.push(table);
    });
    // A vertical line has one x twice; uPlot's tables want each x once.
    const distinct = tables.map(([x, ...ys]) => {
      const keep = x.map((v, k) => k === 0 || v > x[k - 1]);
      return [x, ...ys].map((list) => list.filter((_, k) => keep[k]));
    });
    const axis = (a) => ({
      label: withUnit(a), stroke: colour('--soft'), grid: { stroke: colour('--rule'), width: 1 }, ticks: { stroke: colour('--rule'), width: 1 },
      font: '12px "Source Sans 3 Variable", sans-serif', labelFont: '12px "Source Sans 3 Variable", sans-serif', labelSize: 22,
    });
    const width = () => Math.max(200, element.clientWidth || 480);
    const plot = new uPlot(
      {
        width: width(), height: 230, pxAlign: false, legend: { show: false }, cursor: { show: false }, bands,
        scales: { x: { time: false }, y: { range: (_, low, high) => roomFor(low, high) } },
        axes: [{ ...axis(figure.x_axis), size: 34 }, { ...axis(figure.y_axis), size: 52 }], series,
      },
      uPlot.join(distinct), element);
    const watch = new ResizeObserver(() => plot.setSize({ width: width(), height: 230 }));
    watch.observe(element);
    return () => {
      watch.disconnect();
      plot.destroy();
    };
  }, [figure, dark, printed]);
  return (
    <>
      <div class="curves" ref={place} role="img" aria-label={`${figure.title}: ${withUnit(figure.y_axis)} over ${withUnit(figure.x_axis)}, ${curves.map((c) => c.label).filter(Boolean).join('; ')}`} />
      <ul class="legend">
        {curves.map((c, i) => c.label && (
          <li key={i} class={c.stroke === 'dashed' ? 'dashed' : c.stroke === 'points' || c.x.length === 1 ? 'points' : 'line'}
            style={{ '--own': `var(${strokes[i % strokes.length]})` }}>{c.label}</li>
        ))}
      </ul>
    </>
  );
}

const withUnit = (a) => (a.symbol ? `${a.label}, ${a.symbol}` : a.label);

/** From zero, unless that would squeeze the curves; a little room above. */
function roomFor(low, high) {
  if (low === null || high === null) return [0, 1];
  const from = low > 0 && low < 0.5 * high ? 0 : low;
  const span = high - from || Math.abs(high) || 1;
  return [from === 0 ? 0 : from - 0.06 * span, high + 0.06 * span];
}
