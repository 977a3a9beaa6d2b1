// Undo and redo: a ring of a hundred steps, a drag is one of them.
#include "core/outing/history.h"

#include <doctest/doctest.h>

#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

Outing length(double m) { return test::outing_of({{L::feedline_length_m, m}}); }

/// An outing and its past, as a person drives them.
struct Hand {
  Outing now = length(0);
  History past;

  void change(double m, std::string what, bool same_gesture = false) {
    past.record(now, std::move(what), same_gesture);
    now = length(m);
  }
  void undo() { now = past.undo(now); }
  void redo() { now = past.redo(now); }
  double at() const { return std::get<double>(now.set[std::size_t(L::feedline_length_m)]); }
};

}  // namespace

TEST_CASE("history: nothing to take back at first") {
  const History past;
  CHECK_FALSE(past.can_undo());
  CHECK_FALSE(past.can_redo());
}

TEST_CASE("history: back and forth, each step by its name") {
  Hand hand;
  hand.change(10, "ten");
  hand.change(20, "twenty");
  CHECK(hand.past.undo_names() == "twenty");
  hand.undo();
  CHECK(hand.at() == 10);
  CHECK(hand.past.undo_names() == "ten");
  CHECK(hand.past.redo_names() == "twenty");
  hand.undo();
  CHECK(hand.at() == 0);
  CHECK_FALSE(hand.past.can_undo());
  CHECK(hand.past.redo_names() == "ten");
  hand.redo();
  hand.redo();
  CHECK(hand.at() == 20);
  CHECK_FALSE(hand.past.can_redo());
  CHECK(hand.past.undo_names() == "twenty");
}

TEST_CASE("history: a drag is one step, under its last name") {
  Hand hand;
  hand.change(10, "ten");
  for (int m = 11; m <= 60; ++m) hand.change(m, "drag to " + std::to_string(m), m > 11);
  CHECK(hand.past.undo_names() == "drag to 60");
  hand.undo();
  CHECK(hand.at() == 10);
  CHECK(hand.past.redo_names() == "drag to 60");
  hand.redo();
  CHECK(hand.at() == 60);
  hand.undo();
  hand.undo();
  CHECK(hand.at() == 0);
}

TEST_CASE("history: a gesture that continues nothing is a step of its own") {
  Hand hand;
  hand.change(10, "ten", true);
  REQUIRE(hand.past.can_undo());
  hand.undo();
  CHECK(hand.at() == 0);
}

TEST_CASE("history: a new change ends what could be redone") {
  Hand hand;
  hand.change(10, "ten");
  hand.change(20, "twenty");
  hand.undo();
  hand.change(30, "thirty");
  CHECK_FALSE(hand.past.can_redo());
  hand.undo();
  CHECK(hand.at() == 10);
  hand.change(40, "forty");
  hand.undo();
  hand.change(11, "eleven", true);  // also the next bit of a drag
  CHECK_FALSE(hand.past.can_redo());
}

TEST_CASE("history: a hundred steps back, the oldest go") {
  Hand hand;
  for (int i = 1; i <= 250; ++i) hand.change(i / 10.0, "step " + std::to_string(i));
  int steps = 0;
  while (hand.past.can_undo()) {
    hand.undo();
    ++steps;
  }
  CHECK(steps == int(kMostSteps));
  CHECK(hand.at() == 15);  // after step 150
  int forth = 0;
  while (hand.past.can_redo()) {
    hand.redo();
    ++forth;
  }
  CHECK(forth == steps);
  CHECK(hand.at() == 25);
  hand.change(1, "one more");
  hand.undo();
  CHECK(hand.at() == 25);
}

TEST_CASE("history: the whole outing comes back, name, pin and all") {
  Outing before = length(10);
  before.name = "Meadow";
  before.date = "2026-06-13";
  before.pinned = before.set;
  before.pinned_name = "100 W";
  before.kept = R"({"top":{"later":1}})";
  History past;
  past.record(before, "everything", false);
  const Outing emptied;
  CHECK(past.undo(emptied) == before);
  CHECK(past.redo(before) == emptied);
}
