// What fits between this tree and this stake: every kind of antenna held against apex, span and band, each put into
// the plan by a tap.
#include "core/outing/what_fits.h"

#include <algorithm>

#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

namespace {

std::string minutes(double min, const Style& style) { return say_quantity(min, Unit::minute, 0, style); }

/// "79 % goes out, 15 min up and 10 min down".
std::string worth(const KindFit& one, const Style& style) {
  const std::string out = std::isfinite(one.efficiency_pct) ? say_quantity(one.efficiency_pct, Unit::percent,
                                                                           one.efficiency_pct < 10 ? 1 : 0, style)
                                                            : std::string("not known what");
  return out + " goes out, " + minutes(one.set_up_min, style) + " up and " + minutes(one.pack_down_min, style) +
         " down";
}

std::string counted(const std::vector<KindFit>& fits) {
  const auto fitting = std::count_if(fits.begin(), fits.end(), [](const KindFit& one) { return one.fits; });
  if (fitting == 0) return "No kind fits.";
  return std::to_string(fitting) + " of " + std::to_string(fits.size()) + " kinds fit.";
}

}  // namespace

void Ui::fits_target() {
  section("Between tree and stake", "fits:between");
  slider(L::antenna_apex_m);
  gap();
  slider(L::antenna_span_m);
  gap();
  lever_row(L::antenna_frequency_mhz);
  lever_row(L::antenna_end_m);
}

void Ui::fits_answers() {
  const Style& style = session.style();
  const std::vector<KindFit> fits = what_fits(session.outing(), style);
  title("Antenna, turned round", "turn:title");
  if (fits.empty()) {
    paragraph("Frequency, apex height and free span come first.", "fits:wants", theme.ink2);
    return;
  }
  section(counted(fits), "turn:ways");
  paragraph("Each as its rule cuts it for this frequency. Look up first: nothing goes up near a power line.",
            "fits:each", theme.ink2);
  gap(4);
  open_group(Role::list, "fits:answers", "Kinds of antenna", {x, y, w, 0});
  constexpr float kIndent = 30, kHead = 32, kFoot = 10;
  for (const KindFit& one : fits) {
    rule();
    const std::string id = "fits:take:" + std::string(one.key);
    const State state = one.outlook[R::antenna_fits_m].state;
    const std::string verdict = (one.fits ? "fits" : "does not fit") + std::string(", ") + one.why;
    const std::string second = worth(one, style) + (one.chosen ? "; in the plan" : "");
    const float text_w = w - kIndent;
    const auto height = [&](const std::string& words) {
      return float(pen.lines(words, text_w, Face::regular, type::kLabel).size()) * type::line_height(type::kLabel);
    };
    const auto name_lines = pen.lines(one.name, text_w, Face::bold, type::kBody).size();
    const float head_h = kHead + float(name_lines - 1) * type::line_height(type::kBody);
    const Box box = take(head_h + height(verdict) + height(second) + kFoot);
    const ImU32 fill = hand.down(id) ? theme.fold : theme.paper;
    if (hand.down(id)) pen.fill(box, fill);
    pen.push_ground(fill);
    pen.sign(sign_of(state), {box.x + 11, box.y + 19}, look::sign::kList);
    pen.paragraph(box.x + kIndent, box.y + 26, text_w, one.name, Face::bold, type::kBody, theme.ink);
    float base = box.y + head_h + type::kLabel;
    pen.paragraph(box.x + kIndent, base, text_w, verdict, Face::regular, type::kLabel,
                  one.fits ? theme.ink : colour_of(theme, state));
    base += height(verdict);
    pen.paragraph(box.x + kIndent, base, text_w, second, Face::regular, type::kLabel, theme.ink2);
    pen.pop_ground();
    mirror::Node record;
    record.role = Role::button;
    record.id = id;
    record.name =
        std::string(one.name) + ", " + verdict + ". " + second + (one.chosen ? "" : ". Put it into the plan");
    if (target(std::move(record), box, 0)) {
      if (!one.chosen) session.set_all(one.take, "Antenna " + std::string(one.name));
      session.view.panel = Panel::none;
      wake_at(now_s);
    }
  }
  close_group();
}

}  // namespace gs::parts
