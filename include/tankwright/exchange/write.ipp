// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/exchange/json_text.hpp>
#include <tankwright/exchange/write.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/text/written.hpp>

namespace tankwright::exchange {

namespace detail {

/// A quantity as both notations hold it: a bare number where it has no unit and no doubt, otherwise a text.
[[nodiscard]] inline std::string value_text(const plan::value_base& v, std::string_view quantity) {
  const std::string text = plan::quantity_text(v, quantity);
  const bool pure = quantity == "number" || quantity == "practical_salinity";
  const bool bare = pure && !v.doubt().given && std::isfinite(v.si());
  return bare ? text : quoted_text(text);
}

[[nodiscard]] inline std::string list_text(const plan::values_base& v, std::string_view quantity) {
  std::string all = "[";
  for (const auto& item : v.items) all += (all.size() > 1 ? ", " : "") + value_text(item, quantity);
  return all + "]";
}

/// What both writers do with one table: first its plain keys, then its tables, as TOML wants it.
class table_writer : public plan::visitor {
 protected:
  enum class pass { keys, tables };
  pass now_ = pass::keys;

  virtual void line(const plan::key_info& key, std::string value) = 0;
  virtual void blank(const plan::key_info&, std::string /*example*/) {}
  virtual void one(const plan::key_info& key, plan::table_ref& t) = 0;
  virtual void many(const plan::key_info& key, plan::tables_ref& t) = 0;

  void number(const plan::key_info& key, plan::value_base& v) final {
    if (now_ != pass::keys) return;
    if (v.given()) return line(key, value_text(v, key.quantity));
    const std::string_view all = text::example_of(key.quantity);
    const std::string example{all.substr(0, all.find(" or "))};
    blank(key, key.quantity == "number" ? example : quoted_text(example));
  }
  void numbers(const plan::key_info& key, plan::values_base& v) final {
    if (now_ == pass::keys && v.given()) line(key, list_text(v, key.quantity));
  }
  void one_of(const plan::key_info& key, plan::word_base& w, std::span<const std::string_view> words) final {
    if (now_ != pass::keys) return;
    const auto word = [&](int i) { return quoted_text(words[static_cast<std::size_t>(i)]); };
    w.given() ? line(key, word(w.index())) : blank(key, word(w.has_default() ? w.index() : 0));
  }
  void yes_or_no(const plan::key_info& key, plan::flag& f) final {
    if (now_ == pass::keys && f.given()) line(key, f ? "true" : "false");
  }
  void text(const plan::key_info& key, std::string& t) final {
    if (now_ != pass::keys) return;
    t.empty() ? blank(key, "\"\"") : line(key, quoted_text(t));
  }
  void rating(const plan::key_info& key, plan::composite& c) final {
    if (now_ != pass::keys) return;
    c.given() ? line(key, quoted_text(c.write())) : blank(key, quoted_text(c.example()));
  }
  void table(const plan::key_info& key, plan::table_ref& t) final {
    if (now_ == pass::tables && t.present()) one(key, t);
  }
  void tables(const plan::key_info& key, plan::tables_ref& t) final {
    if (now_ == pass::tables && t.size() > 0) many(key, t);
  }
  /// Both passes over what `visit` visits.
  template <class Visit>
  void both(Visit visit) {
    const pass before = now_;
    now_ = pass::keys;
    visit();
    now_ = pass::tables;
    visit();
    now_ = before;
  }
};

class toml_writer final : public table_writer {
 public:
  explicit toml_writer(const toml_style& style) : style_{&style} {}
  std::string out{};

  void write(plan::build& build) {
    if (!style_->first_lines.empty()) out.append(style_->first_lines).append("\n");
    both([&] { describe(*this, build); });
  }

 private:
  void put(std::string_view mark, const plan::key_info& key, const std::string& value) {
    std::string all{mark};
    all.append(key.name).append(" = ").append(value);
    if (style_->sentences && !key.means.empty()) {
      constexpr std::size_t column = 32;
      std::size_t shown = 0;  // characters, not bytes
      for (const char c : all) shown += (static_cast<unsigned char>(c) & 0xC0) != 0x80;
      all.append(shown < column ? column - shown : 2, ' ').append("# ").append(key.means);
    }
    out += all + "\n";
  }
  void line(const plan::key_info& key, std::string value) override { put("", key, value); }
  void blank(const plan::key_info& key, std::string example) override {
    const std::string path = path_.empty() ? std::string{key.name} : path_ + "." + std::string{key.name};
    for (const blank_key& one : style_->blanks) {
      if (one.path == path) put("# ", key, one.example.empty() ? example : quoted_text(one.example));
    }
  }
  void one(const plan::key_info& key, plan::table_ref& t) override {
    inside(key, "[", "]", [&] { t.visit(*this); });
  }
  void many(const plan::key_info& key, plan::tables_ref& t) override {
    for (std::size_t i = 0; i < t.size(); ++i) inside(key, "[[", "]]", [&] { t.visit(i, *this); });
  }
  template <class Visit>
  void inside(const plan::key_info& key, const char* open, const char* close, Visit visit) {
    const std::string before = path_;
    if (!path_.empty()) path_ += '.';
    path_ += key.name;
    out += (out.empty() ? "" : "\n") + std::string{open} + path_ + close + "\n";
    both(visit);
    path_ = before;
  }

  const toml_style* style_;
  std::string path_{};
};

class json_writer final : public table_writer {
 public:
  json_text out{};

  void write(plan::build& build) {
    out.open_object();
    both([&] { describe(*this, build); });
    out.close_object();
  }

 private:
  void line(const plan::key_info& key, std::string value) override { out.key(key.name).raw(value); }
  void one(const plan::key_info& key, plan::table_ref& t) override {
    out.key(key.name).open_object();
    both([&] { t.visit(*this); });
    out.close_object();
  }
  void many(const plan::key_info& key, plan::tables_ref& t) override {
    out.key(key.name).open_list();
    for (std::size_t i = 0; i < t.size(); ++i) {
      out.open_object();
      both([&] { t.visit(i, *this); });
      out.close_object();
    }
    out.close_list();
  }
};

}  // namespace detail

TANKWRIGHT_INLINE std::string to_toml(const plan::build& build, const toml_style& style) {
  detail::toml_writer writer{style};
  writer.write(const_cast<plan::build&>(build));  // only looked at
  return std::move(writer.out);
}

TANKWRIGHT_INLINE std::string to_json(const plan::build& build) {
  detail::json_writer writer;
  writer.write(const_cast<plan::build&>(build));  // only looked at
  return std::move(writer.out).take();
}

TANKWRIGHT_INLINE std::string starter_plan(text::unit_system units) {
  const bool us = units == text::unit_system::us;
  plan::build b;
  const auto set = [&](const char* path, const char* metric, const char* american) {
    plan::set(b, path, us ? american : metric);
  };
  const auto both = [&](const char* path, const char* text) { plan::set(b, path, text); };
  both("title", "My display");
  set("units", "si", "us");
  set("vessel.length", "2.00 m", "78 in");
  set("vessel.width", "0.80 m", "32 in");
  set("vessel.height", "0.70 m", "28 in");
  set("vessel.water_level", "0.65 m", "26 in");
  set("plumbing.lift", "1.50 m", "60 in");
  set("plumbing.edge_to_rim", "50 mm", "2 in");
  set("plumbing.overflow.surface", "1.6 m2", "17.3 ft2");
  set("plumbing.overflow.crest_height", "0.65 m", "26 in");
  set("plumbing.overflow.width", "0.60 m", "24 in");
  set("plumbing.pump.flows", "0 L/h, 3000 L/h, 6000 L/h, 9000 L/h", "0 US gph, 800 US gph, 1600 US gph, 2400 US gph");
  set("plumbing.pump.heads", "4.0 m, 3.4 m, 2.3 m, 0.5 m", "13 ft, 11 ft, 7.5 ft, 1.5 ft");
  both("plumbing.return[1].label", "return");
  set("plumbing.return[1].bore", "34 mm", "1.36 in");
  set("plumbing.return[1].length", "2.5 m", "8 ft");
  both("plumbing.return[1].loss", "6");
  set("plumbing.return[1].below_edge", "20 mm", "3/4 in");
  both("plumbing.drain[1].label", "main drain");
  set("plumbing.drain[1].bore", "57 mm", "2.05 in");
  set("plumbing.drain[1].length", "1.2 m", "4 ft");
  both("plumbing.drain[1].loss", "2");
  set("plumbing.drain[1].drop", "1.0 m", "40 in");
  set("plumbing.drain[1].inlet_head", "60 mm", "2 1/2 in");
  set("plumbing.sump.rim", "450 mm", "18 in");
  set("plumbing.sump.running_level", "230 mm", "9 in");
  both("plumbing.sump.chamber[1].label", "pump");
  set("plumbing.sump.chamber[1].area", "0.6 m2", "6.5 ft2");
  set("water.temperature", "25 °C", "77 °F");
  both("water.target", "35");
  const toml_style style{.sentences = true,
                         .blanks = {{"plumbing.reserve", us ? "1 in" : "25 mm"},
                                    {"plumbing.wanted_turnover", "3 1/h"},
                                    {"plumbing.return.siphon_break", us ? "1/2 in" : "10 mm"},
                                    {"water.mix_yield", "90 %"},
                                    {"water.new_water", us ? "290 US gal" : "1.1 m3"}},
                         .first_lines =
                             "# A plan to begin with: replace these numbers by your own. Lines that begin with # are\n"
                             "# not read; take the # away where you know the number."};
  return to_toml(b, style);
}

}  // namespace tankwright::exchange
