// Geometry of waves that turn back at a layer: a mirror above a round earth.
#pragma once

namespace gs::sky {

// Earth's radius of ITU-R P.533, from which all of this is counted. Layer heights in km above ground, > 0; all
// functions give NaN for a height or length that is not finite or not above 0, unless said otherwise. The mirror
// stands for a curved path through the layer: real layers lie within some tens of km of any figure, so show a range
// of heights.
inline constexpr double kEarthRadiusKm = 6371.0;
inline constexpr double kUsualLayerKm = 300;   // F layer: 250 to 400 km by hour and season, common practice
inline constexpr double kLeastTakeOffDeg = 3;  // no lower elevation is counted on: ITU-R P.533 (second hand)

/// Take-off angle in degrees above a flat horizon for one hop of hop_km (0 < hop < 20 015): negative where the
/// layer cannot be seen, so that no such hop exists. Source: ITU-R P.533-14 eq. (13) (second hand): atan(cot(d/2R)
/// - R/(R+h) / sin(d/2R)).
double take_off_deg(double hop_km, double layer_km);

/// Length of one hop in km from a take-off angle of 0 to 90 degrees. Source: the same triangle solved the other
/// way.
double hop_km(double take_off_deg, double layer_km);

/// Fewest equal hops that reach distance_km without a take-off angle under least_deg (0..90); 0 where none do (90
/// degrees).
int hops_needed(double distance_km, double layer_km, double least_deg);

/// Length of the ray of one hop (up and down), km, and its angle from the vertical at the layer, degrees.
/// Source: ITU-R P.533-14 eq. (19) (second hand); law of sines.
double ray_km(double hop_km, double layer_km);
double incidence_deg(double take_off_deg, double layer_km);

/// Mirror height in km from the factor M(3000)F2 (MUF at 3000 km over critical frequency; 1.5 to 6): min(1490/M -
/// 176, 500). Source: ITU-R P.533-14 (second hand).
double mirror_km_from_m3000(double m3000);

/// Distance in km within which a layer of this critical frequency gives nothing back on frequency_mhz: 0 at and
/// below the critical frequency; infinite where no angle comes back at all. Secant law on a round earth, no
/// magnetic field: good to some 20 %. Source: secant law, ITU-R P.533 sec. 3 and handbooks.
double skip_km(double frequency_mhz, double critical_mhz, double layer_km);

/// Free-space wavelength in metres; frequency_mhz > 0. Source: speed of light, SI.
double wavelength_m(double frequency_mhz);

/// Elevation in degrees of the lowest lobe of a horizontal antenna over flat, well-reflecting ground:
/// asin(wavelength / 4 h); 90 (straight up) from a quarter wave down. height_m > 0. Source: image theory, handbooks
/// of the trade.
double lowest_lobe_deg(double frequency_mhz, double height_m);

}  // namespace gs::sky
