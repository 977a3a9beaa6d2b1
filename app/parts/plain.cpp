#include "app/parts/ui.h"

namespace gs::parts {

using look::Face;
namespace type = look::type;

namespace {

/// A heading on as many lines as it takes; the first baseline and the height of one line are its kind's.
void heading(Ui& ui, std::string_view text, std::string_view id, float size, float first, float high, int level) {
  const std::vector<std::string_view> lines = ui.pen.lines(text, ui.w, Face::bold, size);
  const float step = type::line_height(size);
  const look::Box box = ui.take(high + step * float(lines.size() - 1));
  float base = box.y + first;
  for (const std::string_view line : lines) {
    ui.pen.text(box.x, base, line, Face::bold, size, ui.theme.ink);
    base += step;
  }
  ui.node(mirror::Role::heading, std::string(id), std::string(text), box).level = level;
}

}  // namespace

void Ui::title(std::string_view text, std::string_view id) { heading(*this, text, id, type::kValue, 27, 34, 1); }

void Ui::section(std::string_view text, std::string_view id) { heading(*this, text, id, type::kLead, 23, 32, 2); }

void Ui::paragraph(std::string_view text, std::string_view id, ImU32 colour) {
  const std::size_t count = pen.lines(text, w, Face::regular, type::kBody).size();
  const look::Box box = take(float(count) * type::line_height(type::kBody));
  pen.paragraph(box.x, box.y + type::kBody, w, text, Face::regular, type::kBody, colour);
  node(mirror::Role::text, std::string(id), std::string(text), box);
}

void Ui::rule() {
  pen.line({x, y}, {right(), y}, theme.rule, look::stroke::kHair);
  gap(1);
}

}  // namespace gs::parts
