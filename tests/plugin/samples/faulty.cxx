// Plug-ins with one fault each, chosen by FAULT when built.
#include "plugin/toehold_plugin.h"

#include <cstdint>
#include <limits>
#include <stdexcept>

#define NO_ENTRY 1
#define NO_TABLE 2
#define OTHER_VERSION 3
#define OTHER_SIZES 4
#define NO_CHECKS 5
#define BAD_ID 6
#define TAKEN_ID 7
#define NULL_TEXT 8
#define ENTRY_THROWS 9
#define BAD_RUNS 10

namespace {

[[maybe_unused]] std::int32_t fine(const toehold_detail*, toehold_report, void*) { return 0; }

[[maybe_unused]] std::int32_t not_finite(const toehold_detail*, toehold_report report, void* host) {
    const toehold_result result = {{"", ""}, "x", "", std::numeric_limits<double>::quiet_NaN(), 1.0, "lb", 0, "", nullptr, 0};
    report(host, &result);
    return 0;
}

[[maybe_unused]] std::int32_t null_text(const toehold_detail*, toehold_report report, void* host) {
    const toehold_result result = {{"", ""}, nullptr, "", 1.0, 1.0, "lb", 0, "", nullptr, 0};
    report(host, &result);
    return report(host, nullptr) == 0 ? 0 : 1;
}

[[maybe_unused]] std::int32_t gives_up(const toehold_detail*, toehold_report, void*) { return 7; }

[[maybe_unused]] std::int32_t throws(const toehold_detail*, toehold_report, void*) { throw std::runtime_error("no"); }

[[maybe_unused]] std::int32_t bad_bytes(const toehold_detail*, toehold_report report, void* host) {
    const toehold_result result = {{"", ""}, "\xff\xfe", "", 1.0, 0.0, "lb", 0, "", nullptr, 0};
    return report(host, &result);
}

const toehold_check checks[] = {
#if FAULT == BAD_ID
    {"Not An Id", "t", "c", "v", fine},
#elif FAULT == TAKEN_ID
    {"faulty-first", "t", "c", "v", fine},
    {"plate-bending", "t", "c", "v", fine},
#elif FAULT == NULL_TEXT
    {"faulty-null", nullptr, "c", "v", fine},
#elif FAULT == BAD_RUNS
    {"faulty-bytes", "t", "c", "v", bad_bytes}, {"faulty-gives-up", "t", "c", "v", gives_up},
    {"faulty-null", "t", "c", "v", null_text},  {"faulty-number", "t", "c", "v", not_finite},
    {"faulty-throws", "t", "c", "v", throws},
#else
    {"faulty-fine", "t", "c", "v", fine},
#endif
};

[[maybe_unused]] toehold_plugin make_table() {
    toehold_plugin table = {TOEHOLD_PLUGIN_HEADER, "Faulty", checks, sizeof checks / sizeof checks[0]};
#if FAULT == OTHER_VERSION
    table.abi = 999;
#elif FAULT == OTHER_SIZES
    table.detail_size += 8;
#elif FAULT == NO_CHECKS
    table.check_count = 0;
#endif
    return table;
}

}  // namespace

#if FAULT != NO_ENTRY
TOEHOLD_PLUGIN_EXPORT const toehold_plugin* toehold_plugin_entry(void) {
#if FAULT == ENTRY_THROWS
    throw std::runtime_error("no");
#elif FAULT == NO_TABLE
    return nullptr;
#else
    static const toehold_plugin table = make_table();
    return &table;
#endif
}
#endif
