// Points and boxes on the sheet, in logical px; x grows right, y grows down.
#pragma once

namespace gs::look {

struct Point {
  float x = 0, y = 0;
};

struct Box {
  float x = 0, y = 0, w = 0, h = 0;
  float right() const { return x + w; }
  float bottom() const { return y + h; }
  float mid_x() const { return x + w / 2; }
  float mid_y() const { return y + h / 2; }
  Box grown(float by) const { return {x - by, y - by, w + 2 * by, h + 2 * by}; }
  bool holds(float px, float py) const { return px >= x && px < right() && py >= y && py < bottom(); }
};

}  // namespace gs::look
