#include "app/parts/ui.h"

namespace gs::parts {

using look::Face;
namespace type = look::type;

void Ui::title(std::string_view text, std::string_view id) {
  const look::Box box = take(34);
  pen.text(box.x, box.y + 27, text, Face::bold, type::kValue, theme.ink);
  node(mirror::Role::heading, std::string(id), std::string(text), box).level = 1;
}

void Ui::section(std::string_view text, std::string_view id) {
  const look::Box box = take(32);
  pen.text(box.x, box.y + 23, text, Face::bold, type::kLead, theme.ink);
  node(mirror::Role::heading, std::string(id), std::string(text), box).level = 2;
}

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
