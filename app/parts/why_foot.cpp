// What stands below an answer: the page of its method, and the answer as text.
#include "app/parts/ui.h"
#include "app/platform/platform.h"

namespace gs::parts {
namespace {

/// The page of words that tells how a link's figures are made (docs/methods).
std::string_view method_page(Link link) {
  switch (link) {
    case Link::battery:
    case Link::radio:
      return "methods/power.html";
    case Link::feedline:
      return "methods/feedline.html";
    case Link::antenna:
      return "methods/antenna.html";
    case Link::sky:
      return "methods/sky.html";
    case Link::contacts:
    case Link::clock:
      return "methods/pace.html";
    case Link::safety:
      return "methods/safety.html";
    case Link::kit:
      return "methods/kit.html";
    case Link::count:
      break;
  }
  return "methods.html";
}

}  // namespace

void Ui::show_page(std::string_view page) {
  session.view.text = platform::open_page(page);
  if (session.view.text.empty()) return;
  session.view.sheet = Sheet::text;
  session.view.panel = Panel::none;
  hand.scroll_to("text", 0);
  wake_at(now_s);
}

void Ui::answer_foot(std::string_view id, Link link, const std::string& as_text) {
  const std::string method_id = std::string(id) + ":method", copy_id = std::string(id) + ":copy";
  const bool two = w >= 460;
  const float each = two ? (w - look::space::kGap) / 2 : w;
  gap();
  const look::Box first = take(look::space::kTargetMain);
  if (!two) gap();
  const look::Box second =
      two ? look::Box{first.x + each + look::space::kGap, first.y, each, first.h} : take(look::space::kTargetMain);
  if (button_in({first.x, first.y, each, first.h}, method_id, "How it is made", Weight::plain, look::Icon::why,
                look::type::kBody, true, "How it is made: the method, in words"))
    show_page(method_page(link));
  const bool copied = session.view.copied == as_text;
  if (button_in(second, copy_id, copied ? "Copied" : "Copy as text", Weight::plain,
                copied ? look::Icon::check : look::Icon::count, look::type::kBody)) {
    platform::copy_text(as_text);
    session.view.copied = as_text;
    wake_at(now_s);
  }
}

}  // namespace gs::parts
