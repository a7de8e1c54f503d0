// SPDX-License-Identifier: BSL-1.0
// Marks of the page. Each verdict has a shape of its own, so that none is told by colour alone.

const shapes = {
  holds: <><circle cx="8" cy="8" r="7" class="body" /><path d="M4.6 8.3l2.4 2.4 4.4-5" class="sign" /></>,
  'thin margin': <><path d="M8 1.2 15.2 14.4H.8z" class="body" /><path d="M8 6v4M8 12.1v.1" class="sign" /></>,
  'does not hold': <><rect x="1" y="1" width="14" height="14" rx="2" class="body" /><path d="M5 5l6 6M11 5l-6 6" class="sign" /></>,
  'not enough known': <><circle cx="8" cy="8" r="6.6" class="hollow" /><path d="M6.2 6.3a1.9 1.9 0 1 1 2.6 1.8c-.6.3-.8.6-.8 1.3M8 11.6v.1" class="line" /></>,
  'for information': <><circle cx="8" cy="8" r="2.6" class="dot" /></>,
  plus: <path d="M8 3v10M3 8h10" class="line" />,
  minus: <path d="M3 8h10" class="line" />,
  undo: <path d="M6 3.5 2.8 6.7 6 9.9M3 6.7h6.2a3.6 3.6 0 0 1 0 7.2H7" class="line" />,
  redo: <path d="M10 3.5l3.2 3.2L10 9.9M13 6.7H6.8a3.6 3.6 0 0 0 0 7.2H9" class="line" />,
  open: <path d="M1.8 13V3.6h4.4l1.6 1.8h6.4V13z" class="line" />,
  save: <path d="M8 2v8M4.8 7 8 10.2 11.2 7M2.5 13.5h11" class="line" />,
  print: <path d="M4.5 6V2h7v4M4.5 11.5h-3V6h13v5.5h-3M4.5 9.5h7V14h-7z" class="line" />,
  light: <><circle cx="8" cy="8" r="3" class="line" /><path d="M8 1v2M8 13v2M1 8h2M13 8h2M3 3l1.4 1.4M11.6 11.6 13 13M13 3l-1.4 1.4M4.4 11.6 3 13" class="line" /></>,
  info: <><circle cx="8" cy="8" r="6.6" class="line" /><path d="M8 7.2v4M8 4.8v.1" class="line" /></>,
  arrow: <path d="M3 8h9M8.6 4.4 12.2 8l-3.6 3.6" class="line" />,
  page: <path d="M3.5 1.8h6l3 3v9.4h-9zM5.8 7.5h4.4M5.8 10.3h4.4" class="line" />,
};

export function Icon({ name }) {
  return (
    <svg class={`icon ${name.replaceAll(' ', '-')}`} viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">{shapes[name]}</svg>
  );
}

/** The sign of the page: a tank with water in it, and a plumb line. */
export function Sign() {
  return (
    <svg class="page-sign" viewBox="0 0 28 28" width="28" height="28" aria-hidden="true">
      <path d="M3 5v18h22V5" fill="none" stroke="currentColor" stroke-width="2.2" stroke-linejoin="round" />
      <path d="M4.1 12c3.3-2 6.6 2 9.9 0s6.6-2 9.9 0v9.9H4.1z" class="sign-water" />
      <path d="M14 1v13" stroke="currentColor" stroke-width="1.4" /><path d="M11.9 14h4.2L14 19.4z" fill="currentColor" />
    </svg>
  );
}
