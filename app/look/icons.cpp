#include "app/look/icons.h"

namespace gs::look {
namespace {

using Kind = IconStroke::Kind;

template <class... Number>
constexpr IconStroke make(Kind kind, Number... number) {
  static_assert(sizeof...(number) <= IconStroke::kMost);
  return {kind, static_cast<unsigned char>(sizeof...(number)), {static_cast<float>(number)...}};
}
template <class... Number>
constexpr IconStroke line(Number... xy) {
  return make(Kind::line, xy...);
}
template <class... Number>
constexpr IconStroke closed(Number... xy) {
  return make(Kind::closed, xy...);
}
constexpr IconStroke circle(double x, double y, double r) { return make(Kind::circle, x, y, r); }
constexpr IconStroke dashed(double x, double y, double r) { return make(Kind::dashed, x, y, r); }
constexpr IconStroke dot(double x, double y, double r) { return make(Kind::dot, x, y, r); }
constexpr IconStroke arc(double x, double y, double r, double from, double to) {
  return make(Kind::arc, x, y, r, from, to);
}

constexpr IconStroke kBattery[]{closed(3, 8, 19, 8, 19, 18, 3, 18), line(21.5, 11, 21.5, 15), line(7, 11, 7, 15),
                                line(11, 11, 11, 15)};
constexpr IconStroke kRadio[]{closed(2.5, 7, 21.5, 7, 21.5, 18, 2.5, 18), circle(16.5, 12.5, 3),
                              line(6, 10.5, 11, 10.5), line(6, 14.5, 9, 14.5)};
constexpr IconStroke kFeed[]{circle(12, 12, 8.5), circle(12, 12, 4.5), line(20.5, 12, 22.5, 21),
                             line(3.5, 12, 1.5, 3)};
constexpr IconStroke kAntenna[]{line(12, 3, 12, 21), line(12, 3, 2, 15), line(12, 3, 22, 15),
                                circle(2.5, 15.5, 1.2), circle(21.5, 15.5, 1.2)};
constexpr IconStroke kSky[]{arc(12, 36, 17, 4.115, 5.309), arc(12, 36, 31, 4.351, 5.074),
                            line(3.5, 20.5, 12, 5.5, 20.5, 20.5)};
constexpr IconStroke kContacts[]{line(4, 5, 4, 19), line(8.5, 5, 8.5, 19), line(13, 5, 13, 19),
                                 line(17.5, 5, 17.5, 19), line(1.5, 17, 21.5, 7)};
constexpr IconStroke kSafety[]{dashed(12, 12, 10), circle(12, 7.6, 2.2), line(12, 10, 12, 15),
                               line(8.4, 11.4, 15.6, 11.4), line(9.5, 19, 12, 15, 14.5, 19)};
constexpr IconStroke kClock[]{circle(12, 12, 9.5), line(12, 6.5, 12, 12, 16, 14.5)};
constexpr IconStroke kKit[]{line(5, 9, 5, 21, 19, 21, 19, 9), arc(12, 9, 7, 3.142, 6.283),
                            line(8, 14, 16, 14, 16, 21), line(9, 14, 8, 14, 8, 21), line(12, 2, 12, 0.5)};
constexpr IconStroke kPin[]{line(6, 22, 6, 2.5, 19, 7, 6, 11.5)};
constexpr IconStroke kUndo[]{line(14, 8, 4, 8), arc(14, 13.5, 5.5, 4.712, 7.854), line(14, 19, 8, 19),
                             line(8, 4, 4, 8, 8, 12)};
constexpr IconStroke kWhy[]{circle(12, 12, 10), arc(12, 9.4, 3.1, 3.142, 7.288),
                            line(12.9, 12.1, 12, 13.4, 12, 14.6), dot(12, 17.6, 0.9)};
constexpr IconStroke kTurn[]{arc(12, 12, 8, 3.456, 5.812), arc(12, 12, 8, 0.314, 2.67),
                             line(19.8, 4.2, 19.4, 8.9, 14.8, 8.2), line(4.2, 19.8, 4.6, 15.1, 9.2, 15.8)};
constexpr IconStroke kSun[]{circle(12, 12, 4.5),          line(12, 1.5, 12, 4.5),     line(12, 19.5, 12, 22.5),
                            line(1.5, 12, 4.5, 12),       line(19.5, 12, 22.5, 12),   line(4.6, 4.6, 6.7, 6.7),
                            line(17.3, 17.3, 19.4, 19.4), line(4.6, 19.4, 6.7, 17.3), line(17.3, 6.7, 19.4, 4.6)};
constexpr IconStroke kDusk[]{arc(12, 17, 5, 3.142, 6.283), line(2, 17, 22, 17), line(6, 21, 18, 21),
                             line(12, 6, 12, 9),           line(4, 10, 6, 12),  line(20, 10, 18, 12)};
constexpr IconStroke kMoon[]{arc(12, 12, 9, 0.188, 4.712), arc(17.2, 7.6, 7, 1.696, 3.738)};
constexpr IconStroke kMore[]{dot(5, 12, 1.8), dot(12, 12, 1.8), dot(19, 12, 1.8)};
constexpr IconStroke kPlus[]{line(12, 4, 12, 20), line(4, 12, 20, 12)};
constexpr IconStroke kMinus[]{line(4, 12, 20, 12)};
constexpr IconStroke kCheck[]{line(4, 13, 10, 19, 20, 6)};
constexpr IconStroke kClose[]{line(5, 5, 19, 19), line(5, 19, 19, 5)};
constexpr IconStroke kErase[]{closed(8, 5, 22, 5, 22, 19, 8, 19, 2, 12), line(11.5, 9, 17.5, 15),
                              line(17.5, 9, 11.5, 15)};
constexpr IconStroke kChev[]{line(9, 5, 16, 12, 9, 19)};
constexpr IconStroke kDown[]{line(5, 9, 12, 16, 19, 9)};
constexpr IconStroke kKeypad[]{dot(6, 6, 1.6),  dot(12, 6, 1.6),  dot(18, 6, 1.6),
                               dot(6, 12, 1.6), dot(12, 12, 1.6), dot(18, 12, 1.6),
                               dot(6, 18, 1.6), dot(12, 18, 1.6), dot(18, 18, 1.6)};
constexpr IconStroke kPerson[]{circle(12, 5, 3), line(12, 8.5, 12, 15), line(6.5, 10.5, 17.5, 10.5),
                               line(8, 22, 12, 15, 16, 22)};
constexpr IconStroke kChild[]{circle(12, 8.5, 3), line(12, 11.5, 12, 16.5), line(7.5, 10.8, 12, 13.5, 16.5, 10.8),
                              line(9, 22, 12, 16.5, 15, 22)};
constexpr IconStroke kStake[]{closed(9, 4, 15, 4, 12, 21), line(3, 9, 9, 6)};

}  // namespace

std::span<const IconStroke> strokes(Icon icon) {
  switch (icon) {
    case Icon::battery:
      return kBattery;
    case Icon::radio:
      return kRadio;
    case Icon::feed:
      return kFeed;
    case Icon::antenna:
      return kAntenna;
    case Icon::sky:
      return kSky;
    case Icon::contacts:
      return kContacts;
    case Icon::safety:
      return kSafety;
    case Icon::clock:
      return kClock;
    case Icon::kit:
      return kKit;
    case Icon::pin:
      return kPin;
    case Icon::undo:
      return kUndo;
    case Icon::why:
      return kWhy;
    case Icon::turn:
      return kTurn;
    case Icon::sun:
      return kSun;
    case Icon::dusk:
      return kDusk;
    case Icon::moon:
      return kMoon;
    case Icon::more:
      return kMore;
    case Icon::plus:
      return kPlus;
    case Icon::minus:
      return kMinus;
    case Icon::check:
      return kCheck;
    case Icon::close:
      return kClose;
    case Icon::erase:
      return kErase;
    case Icon::chev:
      return kChev;
    case Icon::down:
      return kDown;
    case Icon::keypad:
      return kKeypad;
    case Icon::person:
      return kPerson;
    case Icon::child:
      return kChild;
    case Icon::stake:
      return kStake;
    case Icon::count:
      break;
  }
  return {};
}

}  // namespace gs::look
