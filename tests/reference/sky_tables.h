// Outside check values of the sky link. Every row says where it comes from and how well it is known.
#pragma once

#include "core/evidence.h"

namespace gs::test {

/// Geodesics on WGS-84. half_step_*: how far the printed digits (of the places too: 1e-5 degree is 1.1 m) pin the
/// figures.
struct GeodesicRow {
  double latitude1_deg, longitude1_deg, latitude2_deg, longitude2_deg, distance_km, half_step_km, bearing_deg,
      half_step_deg;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kGeodesicCases =
    "published list of geodesic test cases on WGS-84 (method: J. Geodesy 87 (2013) 43-55), places printed to 1e-5 "
    "degree";
inline constexpr GeodesicRow kGeodesics[] = {
    {35.60777, -139.44815, -11.17491, -69.95921, 8935.2446, 0.0016, 111.0987, 0.0001, Evidence::seen,
     kGeodesicCases},
    {55.52454, 106.05087, 77.03196, 197.18234, 4105.0862, 0.0016, 22.0201, 0.0001, Evidence::seen, kGeodesicCases},
    {-21.97856, 142.59065, 41.84138, 98.56635, 8394.3289, 0.0016, 327.5554, 0.0001, Evidence::seen, kGeodesicCases},
    {-66.99028, 112.2363, -12.70631, 285.90344, 11150.3442, 0.0016, 173.7349, 0.0001, Evidence::seen,
     kGeodesicCases},
    {-17.42761, 173.34268, -15.84784, 5.93557, 16076.6032, 0.0016, 200.9664, 0.0001, Evidence::seen,
     kGeodesicCases},
    {32.84994, 48.28919, -56.28556, 202.29132, 16727.0689, 0.0016, 150.4929, 0.0001, Evidence::seen,
     kGeodesicCases},
    {6.96833, 52.74123, -7.39675, 206.17291, 17102.4772, 0.0016, 92.5816, 0.0001, Evidence::seen, kGeodesicCases},
    {-50.56724, -16.30485, -33.56571, -94.97412, 6455.6705, 0.0016, 254.5603, 0.0001, Evidence::seen,
     kGeodesicCases},
    {-58.93002, -8.90775, -8.91104, 133.13503, 11756.066, 0.0016, 140.9654, 0.0001, Evidence::seen, kGeodesicCases},
    {-68.82867, -74.28391, -50.63005, -8.36685, 3956.9369, 0.0016, 93.7743, 0.0001, Evidence::seen, kGeodesicCases},
    {-10.62672, -32.0898, 5.883, -134.31681, 11470.8694, 0.0016, 273.5733, 0.0001, Evidence::seen, kGeodesicCases},
    {-21.76221, 166.90563, 48.72884, 213.97627, 9098.6274, 0.0016, 29.3194, 0.0001, Evidence::seen, kGeodesicCases},
    {-19.79938, -174.47484, -11.99349, -154.35109, 2319.0049, 0.0016, 71.1673, 0.0001, Evidence::seen,
     kGeodesicCases},
    {-11.95887, -116.94513, 4.57352, 7.16501, 13834.7226, 0.0016, 92.7126, 0.0001, Evidence::seen, kGeodesicCases},
    {-41.22777, 122.32875, -7.57291, 130.37946, 3812.686, 0.0016, 14.2851, 0.0001, Evidence::seen, kGeodesicCases},
    {11.01307, 138.25278, 6.62726, 247.05981, 11911.1908, 0.0016, 79.4368, 0.0001, Evidence::seen, kGeodesicCases},
    {40.6, -73.8, 49.01666667, 2.55, 5853.226, 0.0016, 53.47022, 0.0001, Evidence::seen, kGeodesicCases},
};
// Worked apart with a general-purpose geodesy library (npm, version 2.2) to 1e-6 m and 1e-9 degree; the first also
// stands in Karney 2013, section 4, as the example near the antipode.
inline constexpr const char* kGeodesyLibrary = "general-purpose geodesy library, inverse problem on WGS-84";
inline constexpr GeodesicRow kExactGeodesics[] = {
    {-30, 0, 29.9, 179.8, 19989.832827610, 1e-9, 161.890524736, 1e-9, Evidence::seen, kGeodesyLibrary},
    {0, 0, 0.5, 179.5, 19936.288578965, 1e-9, 25.671872868, 1e-9, Evidence::seen, kGeodesyLibrary},
    {0, 0, 0, 179.6, 19989.165416036, 1e-9, 41.537175375, 1e-9, Evidence::seen, kGeodesyLibrary},
    {0, 0, 0, 179, 19926.188851996, 1e-9, 90.000000000, 1e-9, Evidence::seen, kGeodesyLibrary},
    {40, -100, -40, 80, 20003.931458625, 1e-9, 0.000000000, 1e-9, Evidence::seen, kGeodesyLibrary},
    {40, -100, -39.9, 80.1, 19992.108484067, 1e-9, 350.312744461, 1e-9, Evidence::seen, kGeodesyLibrary},
    {90, 0, -90, 0, 20003.931458625, 1e-9, 180.000000000, 1e-9, Evidence::seen, kGeodesyLibrary},
    {-37.9510334166667, 144.4248678888889, -37.6528211388889, 143.9264955277778, 54.972271139, 1e-9, 306.868159203,
     1e-9, Evidence::seen, kGeodesyLibrary},
    {52.5, 13.5, 52.5001, 13.5002, 0.017558386, 1e-9, 50.672346896, 1e-9, Evidence::seen, kGeodesyLibrary},
    {89.9, 10, 89.8, -170, 33.508192836, 1e-9, 0.000000000, 1e-9, Evidence::seen, kGeodesyLibrary},
    {-0.0001, 0, 0, 180, 20003.920401198, 1e-9, 180.000000000, 1e-9, Evidence::seen, kGeodesyLibrary},
    {30, 0, -30, 179.999, 20003.931366321, 1e-9, 0.109625477, 1e-9, Evidence::seen, kGeodesyLibrary},
    {10, 20, 10, 20.5, 54.819676789, 1e-9, 89.956587687, 1e-9, Evidence::seen, kGeodesyLibrary},
    {-33.9, 151.2, -33.9, 151.3, 9.249289901, 1e-9, 90.027887260, 1e-9, Evidence::seen, kGeodesyLibrary},
};

/// The sun. utc_min from 00:00 UTC of the date; NaN: not given by the source.
struct SunRow {
  int year, month, day;
  double utc_min, latitude_deg, longitude_deg, elevation_deg, azimuth_deg, declination_deg, equation_min;
  Evidence evidence;
  const char* source;
};
inline constexpr double kNotGiven = -1e9;
inline constexpr SunRow kSuns[] = {
    {2003, 10, 17, 19 * 60 + 30.5, 39.742476, -105.1786, 39.872046, 194.340241, -9.316179, kNotGiven,
     Evidence::seen, "NREL/TP-560-34302 (rev. January 2008), worked example, without refraction"},
    // 0 h of dynamical time is 59 s before 0 h UT in 1992
    {1992, 10, 13, -59.0 / 60, 0, 0, kNotGiven, kNotGiven, -7.78507, 13.712, Evidence::seen,
     "Astronomical Algorithms, 2nd ed., examples 25.a and 28.b"},
};

/// Rise and set in minutes of the local date.
struct RiseRow {
  int year, month, day;
  double latitude_deg, longitude_deg, utc_offset_min, rise_min, set_min;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kNrel = "NREL/TP-560-34302, worked example (its sunset is that of the evening before)";
inline constexpr RiseRow kRises[] = {
    {2003, 10, 17, 39.742476, -105.1786, -420, 6 * 60 + 12 + 43.0 / 60, kNotGiven, Evidence::seen, kNrel},
    {2003, 10, 16, 39.742476, -105.1786, -420, kNotGiven, 17 * 60 + 20 + 19.0 / 60, Evidence::seen, kNrel},
};

/// Julian day of 0 h as published.
struct JulianRow {
  int year, month, day, julian_day_of_noon;
  Evidence evidence;
  const char* source;
};
inline constexpr JulianRow kJulianDays[] = {
    {2000, 1, 1, 2451545, Evidence::memory, "Astronomical Algorithms, ch. 7: JD 2451545.0 at noon"},
    {1999, 1, 1, 2451180, Evidence::memory, "Astronomical Algorithms, ch. 7: JD 2451179.5 at 0 h"},
    {1987, 6, 19, 2446966, Evidence::memory, "Astronomical Algorithms, ch. 7: JD 2446966.0 at noon"},
    {1988, 1, 27, 2447188, Evidence::memory, "Astronomical Algorithms, ch. 7: JD 2447187.5 at 0 h"},
    {1900, 1, 1, 2415021, Evidence::memory, "Astronomical Algorithms, ch. 7: JD 2415020.5 at 0 h"},
    {1957, 10, 4, 2436116, Evidence::memory, "Astronomical Algorithms, example 7.a: 4.81 October is JD 2436116.31"},
    {1992, 10, 13, 2448909, Evidence::seen, "Astronomical Algorithms, example 25.a: JD 2448908.5 at 0 h"},
};

/// One hop: 6371 km earth, mirror.
struct HopRow {
  double hop_km, layer_km, take_off_deg, ray_km, incidence_deg;
};
inline constexpr const char* kHopSource =
    "ITU-R P.533-14 eq. (13) and (19), second hand, worked out apart to the digits here";
inline constexpr HopRow kHops[] = {{500, 300, 48.41, 789, 39.3},   {1000, 300, 28.12, 1186, 57.4},
                                   {2000, 300, 11.81, 2131, 69.2}, {3000, 300, 4.26, 3121, 72.2},
                                   {1000, 110, 10.05, 1032, 75.5}, {1500, 110, 4.89, 1528, 78.4},
                                   {3500, 350, 3.08, 3651, 71.2},  {200, 250, 67.36, 540, 21.7}};
struct LongestRow {
  double take_off_deg, layer_km, hop_km;
};
inline constexpr LongestRow kLongest[] = {{0, 110, 2351}, {3, 110, 1776}, {5, 110, 1486}, {0, 300, 3836},
                                          {3, 300, 3225}, {5, 300, 2877}, {0, 350, 4130}, {3, 350, 3515},
                                          {5, 350, 3160}, {0, 400, 4402}, {3, 400, 3783}, {5, 400, 3423}};

/// Place to locator with 8 characters; its shorter forms are its beginning. Worked out by hand from the definition;
/// the starred one agrees with a published worked example in its first step, and the last three strings stand in
/// published descriptions.
struct LocatorRow {
  double latitude_deg, longitude_deg;
  const char* locator;
};
inline constexpr LocatorRow kLocators[] = {{0, 0, "JJ00aa00"},
                                           {-90, -180, "AA00aa00"},
                                           {51.4779, -0.0015, "IO91xl94"},
                                           {48.14666, 11.60833, "JN58td25"},
                                           {41.8820670, -87.6278160, "EN61ev41"} /* starred */,
                                           {-33.8568, 151.2153, "QF56od54"},
                                           {39.7392, -104.9903, "DM79mr17"},
                                           {-0.1807, -78.4678, "FI09st36"},
                                           {64.1466, -21.9426, "HP94ad65"},
                                           {-33.9249, 18.4241, "JF96fb08"},
                                           {10.0, -0.0001, "IK90xa90"},
                                           {30.0, -60.0, "GM00aa00"},
                                           {21.3069, -157.8583, "BL11bh73"}};
/// Locator to the middle of its cell, to 1e-6 degree.
inline constexpr LocatorRow kCentres[] = {{41.5, -73, "FN31"},
                                          {41.729167, -72.708333, "FN31pr"},
                                          {48.145833, 11.625, "JN58td"},
                                          {41.895833, -87.625, "EN61ev"},
                                          {21.318750, -157.904167, "BL11bh16"},
                                          {42.689583, -87.870833, "EN62bq55"},
                                          {0.002083, 0.004167, "JJ00aa00"},
                                          {89.997917, 179.995833, "RR99xx99"},
                                          {53.5, -3, "IO83"}};

}  // namespace gs::test
