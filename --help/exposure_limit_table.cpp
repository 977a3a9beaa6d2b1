// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/safety/exposure_limits.h"

namespace gs::safety {
namespace {


constexpr ExposureLimit kExposure_limits[] = {
    {"us_public_1", Rule::us, Audience::passer_by, 0.3, 1.34, 614.0, 0.0, 1.63, 0.0, 1000.0, 0.0, 30.0, 0.0, 0.0,
     Evidence::seen, "47 CFR 1.1310(e)(1) Table 1, general population / uncontrolled"},
    {"us_public_2", Rule::us, Audience::passer_by, 1.34, 30.0, 824.0, -1.0, 2.19, -1.0, 1800.0, -2.0, 30.0, 0.0, 0.0,
     Evidence::seen, "47 CFR 1.1310(e)(1) Table 1, general population / uncontrolled"},
    {"us_public_3", Rule::us, Audience::passer_by, 30.0, 300.0, 27.5, 0.0, 0.073, 0.0, 2.0, 0.0, 30.0, 0.0, 0.0,
     Evidence::seen, "47 CFR 1.1310(e)(1) Table 1, general population / uncontrolled"},
    {"us_operator_1", Rule::us, Audience::radio_operator, 0.3, 3.0, 614.0, 0.0, 1.63, 0.0, 1000.0, 0.0, 6.0, 0.0, 0.0,
     Evidence::seen, "47 CFR 1.1310(e)(1) Table 1, occupational / controlled"},
    {"us_operator_2", Rule::us, Audience::radio_operator, 3.0, 30.0, 1842.0, -1.0, 4.89, -1.0, 9000.0, -2.0, 6.0, 0.0, 0.0,
     Evidence::seen, "47 CFR 1.1310(e)(1) Table 1, occupational / controlled"},
    {"us_operator_3", Rule::us, Audience::radio_operator, 30.0, 300.0, 61.4, 0.0, 0.163, 0.0, 10.0, 0.0, 6.0, 0.0, 0.0,
     Evidence::seen, "47 CFR 1.1310(e)(1) Table 1, occupational / controlled"},
    {"icnirp_public_1", Rule::icnirp, Audience::passer_by, 0.1, 10.0, 300.0, -0.7, 2.2, -1.0, 0.0, 0.0, 30.0, 83.0, 21.5,
     Evidence::memory, "ICNIRP 2020 whole-body levels, Table 5 (from memory; agree with its reprinted local levels over the root of 5); peak: ICNIRP 2010 Table 4, as reprinted"},
    {"icnirp_public_2", Rule::icnirp, Audience::passer_by, 10.0, 30.0, 300.0, -0.7, 2.2, -1.0, 0.0, 0.0, 30.0, 0.0, 0.0,
     Evidence::memory, "ICNIRP 2020 whole-body levels, Table 5 (from memory; agree with its reprinted local levels over the root of 5)"},
    {"icnirp_public_3", Rule::icnirp, Audience::passer_by, 30.0, 400.0, 27.7, 0.0, 0.073, 0.0, 2.0, 0.0, 30.0, 0.0, 0.0,
     Evidence::memory, "ICNIRP 2020 whole-body levels, Table 5 (from memory; agree with its reprinted local levels over the root of 5)"},
    {"icnirp_operator_1", Rule::icnirp, Audience::radio_operator, 0.1, 10.0, 660.0, -0.7, 4.9, -1.0, 0.0, 0.0, 30.0, 170.0, 79.6,
     Evidence::memory, "ICNIRP 2020 whole-body levels, Table 5 (from memory; agree with its reprinted local levels over the root of 5); peak: ICNIRP 2010 Table 3, as reprinted"},
    {"icnirp_operator_2", Rule::icnirp, Audience::radio_operator, 10.0, 30.0, 660.0, -0.7, 4.9, -1.0, 0.0, 0.0, 30.0, 0.0, 0.0,
     Evidence::memory, "ICNIRP 2020 whole-body levels, Table 5 (from memory; agree with its reprinted local levels over the root of 5)"},
    {"icnirp_operator_3", Rule::icnirp, Audience::radio_operator, 30.0, 400.0, 61.0, 0.0, 0.16, 0.0, 10.0, 0.0, 30.0, 0.0, 0.0,
     Evidence::memory, "ICNIRP 2020 whole-body levels, Table 5 (from memory; agree with its reprinted local levels over the root of 5)"},
    {"germany_public_1", Rule::germany, Audience::passer_by, 0.15, 1.0, 87.0, 0.0, 0.73, -1.0, 0.0, 0.0, 6.0, 83.0, 21.0,
     Evidence::seen, "26. BImSchV as reprinted in Bundestag Drucksache 20/5646; peak: ICNIRP 2010 as reprinted there"},
    {"germany_public_2", Rule::germany, Audience::passer_by, 1.0, 10.0, 87.0, -0.5, 0.73, -1.0, 0.0, 0.0, 6.0, 83.0, 21.0,
     Evidence::seen, "26. BImSchV as reprinted in Bundestag Drucksache 20/5646; peak: ICNIRP 2010 as reprinted there"},
    {"germany_public_3", Rule::germany, Audience::passer_by, 10.0, 400.0, 28.0, 0.0, 0.073, 0.0, 2.0, 0.0, 6.0, 0.0, 0.0,
     Evidence::seen, "26. BImSchV as reprinted in Bundestag Drucksache 20/5646"},
    {"germany_operator_1", Rule::germany, Audience::radio_operator, 0.15, 1.0, 87.0, 0.0, 0.73, -1.0, 0.0, 0.0, 6.0, 83.0, 21.0,
     Evidence::practice, "the public's level: no separate tier was found for a German amateur's own household"},
    {"germany_operator_2", Rule::germany, Audience::radio_operator, 1.0, 10.0, 87.0, -0.5, 0.73, -1.0, 0.0, 0.0, 6.0, 83.0, 21.0,
     Evidence::practice, "the public's level: no separate tier was found for a German amateur's own household"},
    {"germany_operator_3", Rule::germany, Audience::radio_operator, 10.0, 400.0, 28.0, 0.0, 0.073, 0.0, 2.0, 0.0, 6.0, 0.0, 0.0,
     Evidence::practice, "the public's level: no separate tier was found for a German amateur's own household"},
};

}  // namespace

std::span<const ExposureLimit> exposure_limits() { return kExposure_limits; }

}  // namespace gs::safety
