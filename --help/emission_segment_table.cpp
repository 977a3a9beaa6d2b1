// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/rules/bands.h"

namespace gs::rules {
namespace {


constexpr EmissionSegment kEmission_segments[] = {
    {"160m_data", 1.8, 2.0, Kind::data, 2.8, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(2)(iii), 97.307(f)(3), text of 2026-09-23"},
    {"160m_phone", 1.8, 2.0, Kind::phone, 0.0, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(2)(iv), 97.307(f)(1), (2), text of 2026-09-23"},
    {"80m_data", 3.5, 3.6, Kind::data, 2.8, 7, Newcomers::cw_only, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(i), 97.307(f)(3), (9), text of 2026-09-23"},
    {"80m_phone", 3.6, 4.0, Kind::phone, 0.0, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(ii), 97.307(f)(1), (2), text of 2026-09-23"},
    {"60m_data", 5.3515, 5.3665, Kind::data, 2.8, 7, Newcomers::as_others, false, true,
     Evidence::seen, "47 CFR 97.303(h), 97.305(c)(3)(iii), 97.307(f)(14), text of 2026-09-23"},
    {"60m_phone", 5.3515, 5.3665, Kind::phone, 2.8, 7, Newcomers::as_others, false, true,
     Evidence::seen, "47 CFR 97.303(h), 97.305(c)(3)(iii), 97.307(f)(14), text of 2026-09-23"},
    {"40m_data_low", 7.0, 7.1, Kind::data, 2.8, 7, Newcomers::cw_only, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(iv), 97.307(f)(3), (9), text of 2026-09-23"},
    {"40m_phone_low", 7.075, 7.1, Kind::phone, 0.0, 5, Newcomers::cw_only, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(v), 97.307(f)(1), (2), (9), (11), text of 2026-09-23; Region 2 west of 130 W or south of 20 N is not told apart"},
    {"40m_data_high", 7.1, 7.125, Kind::data, 2.8, 7, Newcomers::cw_only, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(vi), 97.307(f)(3), (9), text of 2026-09-23"},
    {"40m_phone", 7.125, 7.3, Kind::phone, 0.0, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(vii), 97.307(f)(1), (2), text of 2026-09-23"},
    {"30m_data", 10.1, 10.15, Kind::data, 2.8, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(viii), 97.307(f)(3), text of 2026-09-23"},
    {"20m_data", 14.0, 14.15, Kind::data, 2.8, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(ix), 97.307(f)(3), text of 2026-09-23"},
    {"20m_phone", 14.15, 14.35, Kind::phone, 0.0, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(x), 97.307(f)(1), (2), text of 2026-09-23"},
    {"17m_data", 18.068, 18.11, Kind::data, 2.8, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(xi), 97.307(f)(3), text of 2026-09-23"},
    {"17m_phone", 18.11, 18.168, Kind::phone, 0.0, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(xii), 97.307(f)(1), (2), text of 2026-09-23"},
    {"15m_data", 21.0, 21.2, Kind::data, 2.8, 7, Newcomers::cw_only, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(xiii), 97.307(f)(3), (9), text of 2026-09-23"},
    {"15m_phone", 21.2, 21.45, Kind::phone, 0.0, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(xiv), 97.307(f)(1), (2), text of 2026-09-23"},
    {"12m_data", 24.89, 24.93, Kind::data, 2.8, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(xv), 97.307(f)(3), text of 2026-09-23"},
    {"12m_phone", 24.93, 24.99, Kind::phone, 0.0, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(xvi), 97.307(f)(1), (2), text of 2026-09-23"},
    {"10m_data", 28.0, 28.3, Kind::data, 2.8, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(xvii), 97.307(f)(3), text of 2026-09-23"},
    {"10m_phone_low", 28.3, 28.5, Kind::phone, 0.0, 7, Newcomers::ssb_only, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(xviii), 97.307(f)(1), (2), (10), text of 2026-09-23"},
    {"10m_phone_middle", 28.5, 29.0, Kind::phone, 0.0, 7, Newcomers::as_others, false, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(xix), 97.307(f)(1), (2), text of 2026-09-23"},
    {"10m_phone_high", 29.0, 29.7, Kind::phone, 0.0, 7, Newcomers::as_others, true, false,
     Evidence::seen, "47 CFR 97.305(c)(3)(xx), 97.307(f)(2), text of 2026-09-23"},
    {"6m_low_phone", 50.1, 51.0, Kind::phone, 0.0, 7, Newcomers::as_others, true, false,
     Evidence::seen, "47 CFR 97.305(c)(4)(i), 97.307(f)(2), (5), text of 2026-09-23"},
    {"6m_low_data", 50.1, 51.0, Kind::data, 20.0, 7, Newcomers::as_others, true, false,
     Evidence::seen, "47 CFR 97.305(c)(4)(i), 97.307(f)(5), text of 2026-09-23"},
    {"6m_phone", 51.0, 54.0, Kind::phone, 0.0, 7, Newcomers::as_others, true, false,
     Evidence::seen, "47 CFR 97.305(c)(4)(ii), 97.307(f)(2), (5), text of 2026-09-23"},
    {"6m_data", 51.0, 54.0, Kind::data, 20.0, 7, Newcomers::as_others, true, false,
     Evidence::seen, "47 CFR 97.305(c)(4)(ii), 97.307(f)(5), text of 2026-09-23"},
    {"2m_phone", 144.1, 148.0, Kind::phone, 0.0, 7, Newcomers::as_others, true, false,
     Evidence::seen, "47 CFR 97.305(c)(4)(iii), 97.307(f)(2), (5), text of 2026-09-23"},
    {"2m_data", 144.1, 148.0, Kind::data, 20.0, 7, Newcomers::as_others, true, false,
     Evidence::seen, "47 CFR 97.305(c)(4)(iii), 97.307(f)(5), text of 2026-09-23"},
};

}  // namespace

std::span<const EmissionSegment> emission_segments() { return kEmission_segments; }

}  // namespace gs::rules
