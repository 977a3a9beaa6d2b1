// A phone's narrow sheets: nothing below the edge, no words on words, at ordinary and at the largest text.
#include <doctest/doctest.h>

#include <algorithm>

#include "app/parts/labels.h"
#include "tests/app/stage.h"

using namespace gs;
using stage::Stage;

namespace {

std::vector<look::TextRecord> texts_of(Stage& stage, int text_pct) {
  stage.session().settings.text_pct = text_pct;
  stage.settle();
  stage.settle();
  std::vector<look::TextRecord> texts;
  stage.shell().record_texts(&texts);
  stage.frame();
  stage.shell().record_texts(nullptr);
  return texts;
}

}  // namespace

TEST_CASE("the slider at the foot of a phone's sheet stands whole above the edge, its scale's ends included") {
  for (const int text_pct : {100, 125}) {  // with larger text nothing stands fixed: it scrolls with its sheet
    Stage stage(390, 844);
    stage.open_sample();
    stage.session().pin();
    stage.session().set(L::feedline_length_m, 60.0);
    stage.session().view.sheet = Sheet::link;
    stage.session().view.link = Link::feedline;
    float lowest = 0;
    for (const look::TextRecord& text : texts_of(stage, text_pct))
      if (text.text == "100") lowest = std::max(lowest, text.rect.bottom());
    const float edge = 844 / stage.shell().text_scale();
    MESSAGE("text " << text_pct << " %: end of the scale at " << lowest << " of " << edge << " px");
    CHECK(lowest > 0);
    CHECK(lowest <= edge);
  }
}

TEST_CASE("words beside a phone's chain are whole and lie on no other words") {
  for (const int text_pct : {100, 200}) {
    for (const double length_m : {15.0, 60.0, 90.0}) {
      Stage stage(390, 844);
      stage.open_sample();
      stage.session().pin();
      stage.session().set(L::feedline_length_m, length_m);
      const auto texts = texts_of(stage, text_pct);
      const mirror::Node& chain = stage.at("chain");
      const float scale = stage.shell().text_scale();
      const look::Box area{chain.x / scale, chain.y / scale, chain.w / scale, chain.h / scale};
      INFO("text " << text_pct << " %, " << length_m << " m");
      int words = 0;
      for (std::size_t i = 0; i < texts.size(); ++i) {
        if (!parts::overlap(texts[i].rect, area)) continue;
        ++words;
        const std::string& text = texts[i].text;
        CHECK_MESSAGE((text.empty() || text.back() != ',' ||
                       (i + 1 < texts.size() && texts[i + 1].rect.x == texts[i].rect.x)),
                      text << " is cut");
        for (std::size_t k = 0; k < i; ++k) {
          const look::Box a = texts[i].rect, b = texts[k].rect;
          CHECK_MESSAGE(!parts::overlap({a.x, a.y + 5, a.w, a.h - 10}, {b.x, b.y + 5, b.w, b.h - 10}),
                        text << " lies on " << texts[k].text);
        }
      }
      CHECK(words > 12);
    }
  }
}

TEST_CASE("what has the keyboard is brought into sight once; a wheel may leave it there, a key brings it back") {
  Stage stage(390, 844);
  stage.open_sample();
  stage.session().view.sheet = Sheet::link;
  stage.session().view.link = Link::antenna;
  stage.settle();
  const std::string far = std::string(lever(L::antenna_feed_r_ohm).key) + ":row";
  stage.shell().act({far, platform::MirrorAction::Verb::focus});
  stage.settle();
  const mirror::Node shown = stage.at(far);
  CHECK(shown.y + shown.h <= 844);
  stage.shell().wheel(200, 400, 0, -4000);
  stage.settle();
  const float away = stage.at(far).y;
  CHECK(away > 844);
  stage.settle();
  CHECK(stage.at(far).y == away);
  stage.press(platform::Key::down);
  stage.settle();
  CHECK(stage.at(far).y < 844);
}
