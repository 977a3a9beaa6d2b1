// chemistries() itself is written by assets/catalogues/make_tables.py.
#include "core/battery/chemistry.h"

namespace gs::battery {

double at(std::span<const CurvePoint> curve, double x) {
  if (x <= curve.front().x) return curve.front().y;
  for (std::size_t i = 1; i < curve.size(); ++i) {
    if (x > curve[i].x) continue;
    const CurvePoint &a = curve[i - 1], &b = curve[i];
    return a.y + (b.y - a.y) * ((x - a.x) / (b.x - a.x));
  }
  return curve.back().y;
}

double where(std::span<const CurvePoint> curve, double y) {
  if (y <= curve.front().y) return curve.front().x;
  for (std::size_t i = 1; i < curve.size(); ++i) {
    if (y > curve[i].y) continue;
    const CurvePoint &a = curve[i - 1], &b = curve[i];
    return a.x + (b.x - a.x) * ((y - a.y) / (b.y - a.y));
  }
  return curve.back().x;
}

const Chemistry* find_chemistry(std::string_view key) {
  for (const Chemistry& chemistry : chemistries())
    if (chemistry.key == key) return &chemistry;
  return nullptr;
}

}  // namespace gs::battery
