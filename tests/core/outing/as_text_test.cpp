// What is copied says what stands on screen: value, unit, state, provenance.
#include "core/outing/as_text.h"

#include <doctest/doctest.h>

#include "core/outing/plan.h"

using namespace gs;

namespace {

bool has(const std::string& text, std::string_view part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST_CASE("a reading as text: value, unit, where each factor comes from, and why where it is not known") {
  Outing outing;
  const Plan empty = resolve(outing);
  const std::string unknown = reading_as_text(R::feedline_weight_g, empty, evaluate(empty), {});
  CHECK(has(unknown, "not known"));
  outing = with(outing, L::feedline_length_m, 20.0);
  outing = with(outing, L::feedline_cable, Value{std::string(lever(L::feedline_cable).options()[0].key)});
  const Plan plan = resolve(outing);
  const Outlook outlook = evaluate(plan);
  const std::string text = reading_as_text(R::feedline_weight_g, plan, outlook, {});
  CHECK(text.find(std::string(reading(R::feedline_weight_g).name) + ": ") == 0);
  CHECK(has(text, "\n- Feed line length: 20 m (yours)"));
  CHECK(has(text, "\nSource: "));
  Style comma;
  comma.decimal_sign = ',';
  outing = with(outing, L::feedline_length_m, 20.5);
  const Plan other = resolve(outing);
  CHECK(has(reading_as_text(R::feedline_weight_g, other, evaluate(other), comma), "20,5 m"));
}

TEST_CASE("every reading and every check has a text, without an empty line or a bare number") {
  const Plan plan = resolve(Outing{});
  const Outlook outlook = evaluate(plan);
  for (std::size_t i = 0; i < std::size_t(R::count); ++i) {
    const std::string text = reading_as_text(R(i), plan, outlook, {});
    CHECK_MESSAGE(!has(text, "\n\n"), text);
    CHECK_MESSAGE(!has(text, " nan"), text);
  }
  for (const Check& check : checks()) {
    const CheckValues values = resolve_check(check, std::vector<Value>(check.inputs.size()), plan);
    const std::string text = check_as_text(check, values, work_out(check, values), {});
    CHECK_MESSAGE(!has(text, " nan"), text);
    CHECK_MESSAGE(has(text, check.question), text);
  }
}
