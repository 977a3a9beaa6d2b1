// Sun and way from the place, the date and the clock. None of it is judged: a band's opening is not known yet.
#include <cmath>

#include "core/outing/evaluate_parts.h"
#include "core/sky/geodesic.h"
#include "core/sky/locator.h"
#include "core/sky/sun.h"

namespace gs {
namespace {

sky::Place centre_of(double locator_number) {
  return sky::read_locator(sky::locator_from_number(locator_number)).centre;
}

void put_sun(const Plan& plan, sky::Place here, const Joined& joined, Outlook& out) {
  const double offset_min = plan[L::clock_utc_offset_min];
  const sky::Crossings crossings = sky::sun_crossings(here, *plan.date, offset_min);
  const auto put_crossing = [&](R id, std::optional<double> minute) {
    if (minute) {
      put(out, id, judge(plan, id, shown_min(plan, *minute)));
    } else {
      withhold(out, {id}, {Doubt::no_horizon, L::site_locator});
    }
  };
  put_crossing(R::sky_sunrise_min, crossings.rise_min);
  put_crossing(R::sky_sunset_min, crossings.set_min);
  if (joined.no_clock.doubt != Doubt::none) {
    withhold(out, {R::sky_sun_at_start_deg, R::sky_sun_at_pack_by_deg}, joined.no_clock);
    return;
  }
  const auto height_deg = [&](double local_min) {
    return sky::sun_at(here, *plan.date, local_min - offset_min).elevation_deg;
  };
  put(out, R::sky_sun_at_start_deg, judge(plan, R::sky_sun_at_start_deg, height_deg(joined.starts_min)));
  put(out, R::sky_sun_at_pack_by_deg, judge(plan, R::sky_sun_at_pack_by_deg, height_deg(joined.pack_by_min)));
}

}  // namespace

void put_sky(const Plan& plan, const Joined& joined, Outlook& out) {
  Doubtful no_sun = first_missing(plan, {L::site_locator, L::clock_utc_offset_min});
  if (no_sun.doubt == Doubt::none && !plan.date) no_sun = {Doubt::no_date, L::site_locator};
  if (no_sun.doubt == Doubt::none) {
    put_sun(plan, centre_of(plan[L::site_locator]), joined, out);
  } else {
    withhold(out, {R::sky_sunrise_min, R::sky_sunset_min, R::sky_sun_at_start_deg, R::sky_sun_at_pack_by_deg},
             no_sun);
  }
  const Doubtful no_way = first_missing(plan, {L::site_locator, L::sky_toward_locator});
  if (no_way.doubt != Doubt::none) {
    withhold(out, {R::sky_distance_km, R::sky_bearing_deg}, no_way);
    return;
  }
  const sky::Path way =
      sky::shortest_path(centre_of(plan[L::site_locator]), centre_of(plan[L::sky_toward_locator]));
  put(out, R::sky_distance_km, judge(plan, R::sky_distance_km, way.distance_km));
  put(out, R::sky_bearing_deg, judge(plan, R::sky_bearing_deg, way.bearing_deg));
}

}  // namespace gs
