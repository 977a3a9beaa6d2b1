// Rows and readings of them that several checks on battery, radio and lead share.
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include "core/battery/discharge.h"
#include "core/outing/check_rows.h"
#include "core/outing/checks_power.h"

namespace gs::power {

inline double zero(const Plan&) { return 0; }
inline double hundred(const Plan&) { return 100; }
inline double room_temperature(const Plan&) { return 25; }
inline double an_hour(const Plan&) { return 60; }
inline double car_supply(const Plan&) { return 13.8; }

inline constexpr Lever kReceive{.key = "receive_a",
                                .name = "Receive current",
                                .link = Link::radio,
                                .unit = Unit::ampere,
                                .digits = 3,
                                .least = 0,
                                .most = 20,
                                .step = 0.01,
                                .source = "read off a meter in the supply lead, or the set's own data"};
inline constexpr Lever kTransmit{
    .key = "transmit_a",
    .name = "Current while sending",
    .link = Link::radio,
    .unit = Unit::ampere,
    .digits = 2,
    .least = 0,
    .most = 100,
    .step = 0.1,
    .source = "average while sending, read off a meter; key-down is the most it can be"};
inline constexpr Lever kTransmitShare{.key = "transmit_share_pct",
                                      .name = "Transmit share",
                                      .link = Link::radio,
                                      .unit = Unit::percent,
                                      .digits = 0,
                                      .least = 0,
                                      .most = 100,
                                      .step = 1,
                                      .optional = true,
                                      .source = "as in the plan; or give Keyed for"};
inline constexpr Lever kKeyed{.key = "keyed_min",
                              .name = "Keyed for",
                              .link = Link::radio,
                              .unit = Unit::minute,
                              .digits = 2,
                              .least = 0,
                              .most = 1440,
                              .step = 1,
                              .optional = true,
                              .source = "where given it counts instead of the transmit share"};
inline constexpr Lever kEvery{.key = "out_of_min",
                              .name = "Out of",
                              .link = Link::radio,
                              .unit = Unit::minute,
                              .digits = 2,
                              .least = 0.01,
                              .most = 1440,
                              .step = 1,
                              .usual = an_hour,
                              .source = "usual value: an hour"};
inline constexpr Lever kCapacity{.key = "capacity_ah",
                                 .name = "Battery capacity",
                                 .link = Link::battery,
                                 .unit = Unit::ampere_hour,
                                 .digits = 1,
                                 .least = 0.1,
                                 .most = 1000,
                                 .step = 0.5,
                                 .scale = Scale::log,
                                 .source = "the label; lead-acid: in 20 h"};
inline constexpr Lever kChemistry{.key = "chemistry",
                                  .name = "Chemistry",
                                  .link = Link::battery,
                                  .kind = Kind::choice,
                                  .options = chemistry_options,
                                  .usual = zero,
                                  .source = "the battery catalogue; usual value: its first row"};
inline constexpr Lever kReserve{.key = "reserve_pct",
                                .name = "Reserve",
                                .link = Link::battery,
                                .unit = Unit::percent,
                                .digits = 0,
                                .least = 0,
                                .most = 95,
                                .step = 5,
                                .optional = true,
                                .source = "what stays in; not given: the chemistry's usual reserve"};
inline constexpr Lever kHealth{.key = "health_pct",
                               .name = "Battery health",
                               .link = Link::battery,
                               .unit = Unit::percent,
                               .digits = 0,
                               .least = 10,
                               .most = 120,
                               .step = 5,
                               .usual = hundred,
                               .source = "usual value: as good as its label"};
inline constexpr Lever kTemperature{.key = "temperature_c",
                                    .name = "Battery temperature",
                                    .link = Link::battery,
                                    .unit = Unit::celsius,
                                    .digits = 0,
                                    .least = -40,
                                    .most = 60,
                                    .step = 1,
                                    .usual = room_temperature,
                                    .source = "of the battery itself; usual value: that of its label"};
inline constexpr Lever kUsed{.key = "used_ah",
                             .name = "Used so far",
                             .link = Link::battery,
                             .unit = Unit::ampere_hour,
                             .digits = 1,
                             .least = 0,
                             .most = 1000,
                             .step = 0.5,
                             .usual = zero,
                             .source = "read off a charge meter; usual value: full"};
inline constexpr Lever kOneWay{.key = "length_m",
                               .name = "Lead length",
                               .link = Link::radio,
                               .unit = Unit::metre,
                               .digits = 2,
                               .least = 0,
                               .most = 50,
                               .step = 0.1,
                               .source = "one way; both conductors are counted"};
inline constexpr Lever kWireTemperature{.key = "wire_c",
                                        .name = "Wire temperature",
                                        .link = Link::radio,
                                        .unit = Unit::celsius,
                                        .digits = 0,
                                        .least = -40,
                                        .most = 105,
                                        .step = 1,
                                        .usual = [](const Plan&) { return 20.0; },
                                        .source = "usual value: that of the wire tables"};
inline constexpr Lever kWire{.key = "wire",
                             .name = "Wire",
                             .link = Link::radio,
                             .kind = Kind::choice,
                             .options = wire_options,
                             .source = "the wire catalogue"};
inline constexpr Lever kContacts{
    .key = "contacts_ohm",
    .name = "Fuse and plugs",
    .link = Link::radio,
    .unit = Unit::ohm,
    .digits = 4,
    .least = 0,
    .most = 1,
    .step = 0.001,
    .usual = zero,
    .source = "usual value: none; about 1 mΩ a pair of sound plugs, a few for fuse and holder"};
inline constexpr Lever kSupply{.key = "supply_v",
                               .name = "Supply",
                               .link = Link::radio,
                               .unit = Unit::volt,
                               .digits = 1,
                               .least = 1,
                               .most = 60,
                               .step = 0.1,
                               .usual = car_supply,
                               .source = "usual value: what 12 V sets are measured at"};

/// The first input that must be given and is not, said; "" when all are there. Optional ones may be missing.
std::string missing(std::span<const CheckInput> inputs, std::span<const double> in);

/// Share of the time on transmit, 0..1, from minutes where they are given, else from the share.
struct SendingShare {
  double share;
  std::string trouble;
};
SendingShare sending_share(double share_pct, double keyed_min, double every_min);

/// Sending and listening as the small questions know them: overs of the usual 20 s, no lead, no peaks.
inline battery::Load plain_load(double receive_a, double sending_a, double share) {
  return {receive_a, sending_a, sending_a, share, 20.0 / 3600, 0};
}

const battery::Chemistry& chemistry_of(double index);
double reserve_or_usual_pct(double reserve_pct, const battery::Chemistry& chemistry);

}  // namespace gs::power
