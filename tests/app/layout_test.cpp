// Every sheet at every size of surface and of text, from the draw calls themselves: no words over other words, none
// wider or higher than the place they stand in, no target too small or too near another.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "tests/app/screens.h"

using namespace gs;
using stage::Screen;
using stage::screens;
using stage::Stage;

namespace {

struct Size {
  float w, h;
};
constexpr Size kSizes[] = {{390, 844}, {320, 568}, {844, 390}, {820, 1180}, {1024, 768}, {1440, 900}};
constexpr int kTexts_pct[] = {100, 150, 200};
constexpr float kApart_px = 8 - 0.05F;  // places are sums of floats

/// What a text blackens: capitals and descenders, not its line height. Shares of the em, measured in the font
/// files.
look::Box inked(const look::TextRecord& text) {
  constexpr float kBaseline = 1.0175F, kCapital = 0.75F, kDescender = 0.2F;
  if (text.rect.h < text.size) return text.rect;  // the large digits: told as they stand
  const float base = text.rect.y + kBaseline * text.size;
  const float below = text.text.find_first_of("gjpqyQ,;()/") == std::string::npos ? 0 : kDescender;
  return {text.rect.x, base - kCapital * text.size, text.rect.w, (kCapital + below) * text.size};
}

look::Box common(look::Box a, look::Box b) {
  const float x = std::max(a.x, b.x), y = std::max(a.y, b.y);
  return {x, y, std::max(0.0F, std::min(a.right(), b.right()) - x),
          std::max(0.0F, std::min(a.bottom(), b.bottom()) - y)};
}

bool same(look::Box a, look::Box b) {
  return std::abs(a.x - b.x) + std::abs(a.y - b.y) + std::abs(a.w - b.w) + std::abs(a.h - b.h) < 0.1F;
}

struct Seen {
  std::vector<look::TextRecord> texts;
  float scale;
};

Seen look_at(Stage& stage) {
  Seen seen;
  stage.shell().record_texts(&seen.texts);
  stage.frame();
  stage.shell().record_texts(nullptr);
  seen.scale = stage.shell().text_scale();
  return seen;
}

/// Within one scrolled area also what is out of sight; else what can be seen of both.
int words_on_words(const Seen& seen) {
  int pairs = 0;
  const auto& texts = seen.texts;
  for (std::size_t i = 0; i < texts.size(); ++i) {
    for (std::size_t k = 0; k < i; ++k) {
      look::Box a = inked(texts[i]), b = inked(texts[k]);
      if (!same(texts[i].clip, texts[k].clip)) a = common(a, texts[i].clip), b = common(b, texts[k].clip);
      const look::Box both = common(a, b);
      ++pairs;
      if (both.w >= 1 && both.h >= 2)
        FAIL_CHECK("\"" << texts[i].text << "\" lies on \"" << texts[k].text << "\" at " << both.x << ", "
                        << both.y);
    }
  }
  return pairs;
}

/// Within the surface, the scrolled area and the control in which they stand.
int words_in_place(Stage& stage, const Seen& seen) {
  for (const look::TextRecord& text : seen.texts) {
    const look::Box ink = inked(text);
    if (text.rect.x < text.clip.x - 0.6F || text.rect.right() > text.clip.right() + 0.6F)
      FAIL_CHECK("cut at the side: \"" << text.text << "\" " << text.rect.x << " to " << text.rect.right() << " in "
                                       << text.clip.x << " to " << text.clip.right());
    for (const mirror::Node& node : stage.tree().nodes) {
      if (node.role != mirror::Role::button && node.role != mirror::Role::radio &&
          node.role != mirror::Role::checkbox)
        continue;
      const look::Box box{node.x / seen.scale, node.y / seen.scale, node.w / seen.scale, node.h / seen.scale};
      const look::Box in_sight{box.x, box.y + node.cut_top / seen.scale, box.w,
                               box.h - (node.cut_top + node.cut_bottom) / seen.scale};
      if (!in_sight.holds(ink.mid_x(), ink.mid_y()) || !text.clip.holds(ink.mid_x(), ink.mid_y())) continue;
      if (text.rect.x < box.x - 1.5F || text.rect.right() > box.right() + 1.5F)
        FAIL_CHECK("\"" << text.text << "\" is wider than " << node.id);
      // a link's state may stand above its cell: it rises with the shape
      if (node.id.rfind("chain:", 0) == 0) continue;
      if (ink.y < box.y - 1.5F || ink.bottom() > box.bottom() + 1.5F)
        FAIL_CHECK("\"" << text.text << "\" is higher than " << node.id);
    }
  }
  return int(seen.texts.size());
}

/// Large enough, on the surface, reachable by scrolling at most, not over each other.
int targets_in_reach(Stage& stage, const Seen& seen, double& nearest) {
  std::vector<const mirror::Node*> hands;
  for (const mirror::Node& node : stage.tree().nodes)
    if (mirror::is_interactive(node.role)) hands.push_back(&node);
  std::map<std::string, const parts::Target*> reach;
  for (const parts::Target& target : stage.shell().targets())
    if (target.kind != parts::Target::Kind::scroll) reach[target.id] = &target;
  for (const mirror::Node* node : hands) {
    if (std::min(node->w, node->h) / seen.scale < 47.9F)
      FAIL_CHECK(node->id << " is " << node->w / seen.scale << " x " << node->h / seen.scale);
    if (node->x < -0.5F || node->x + node->w > stage::machine().view.width + 0.5F)
      FAIL_CHECK(node->id << " leaves the surface");
    if (node->disabled || reach.count(node->id) != 0) continue;
    const float mid = (node->x + node->w / 2) / seen.scale;
    const bool scrolls = std::any_of(
        stage.shell().targets().begin(), stage.shell().targets().end(), [&](const parts::Target& target) {
          return target.kind == parts::Target::Kind::scroll && mid >= target.box.x && mid <= target.box.right();
        });
    if (!scrolls) FAIL_CHECK(node->id << " can never be reached");
  }
  // rows of one width may touch, and the links of the chain, which are one drawing; others are 8 px apart
  for (auto one = reach.begin(); one != reach.end(); ++one) {
    for (auto two = reach.begin(); two != one; ++two) {
      const look::Box a = one->second->box, b = two->second->box;
      if (one->second->kind == parts::Target::Kind::slide || two->second->kind == parts::Target::Kind::slide)
        continue;
      const float dx = std::max(a.x, b.x) - std::min(a.right(), b.right());
      const float dy = std::max(a.y, b.y) - std::min(a.bottom(), b.bottom());
      if (std::max(dx, dy) < -0.6F) FAIL_CHECK(one->first << " lies on " << two->first);
      const bool rows = std::abs(a.w - b.w) < 1 && std::abs(a.x - b.x) < 1;
      const bool chain = one->first.rfind("chain:", 0) == 0 && two->first.rfind("chain:", 0) == 0;
      if (!rows && !chain) nearest = std::min(nearest, double(std::max(dx, dy)));
      if (!rows && !chain && std::max(dx, dy) < kApart_px)
        FAIL_CHECK(one->first << " and " << two->first << " are " << dx << ", " << dy << " px apart");
    }
  }
  return int(hands.size());
}

}  // namespace

TEST_CASE("at every size of surface and text words stand in their places and targets are within reach") {
  int shown = 0, pairs = 0, texts = 0, targets = 0;
  double nearest = 1e9;
  for (const Size size : kSizes) {
    for (const Screen& screen : screens()) {
      Stage stage(size.w, size.h);
      screen.open(stage);
      for (const int text_pct : kTexts_pct) {
        stage.session().settings.text_pct = text_pct;
        stage.settle();
        stage.settle();
        INFO(screen.name << " at " << size.w << "x" << size.h << ", text " << text_pct << " %");
        const Seen seen = look_at(stage);
        CHECK(!seen.texts.empty());
        ++shown;
        pairs += words_on_words(seen);
        texts += words_in_place(stage, seen);
        targets += targets_in_reach(stage, seen, nearest);
      }
    }
  }
  MESSAGE(shown << " screens: " << texts << " texts, " << pairs << " pairs of them, " << targets
                << " targets; nearest two that are not rows " << nearest << " px apart");
}
