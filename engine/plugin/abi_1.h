#pragma once
// The structures of the plug-in interface's first version, for tables built against that header. They never change.
#include <cstddef>
#include <cstdint>

namespace toehold::plugin::abi_1 {

inline constexpr std::uint32_t version = 1;

struct Anchor {
    const char* id;
    double x_in, y_in;
    double diameter_in;
    double tension_lb;
    double shear_lb;
    double direction_deg;
};

struct Push {
    const char* name;
    double push_lb;
    double down_lb;
    double height_in;
};

struct Detail {
    const char* name;
    double guard_height_in;
    double plate_thickness_in;
    std::int32_t lrfd;
    const Anchor* anchors;
    std::size_t anchor_count;
    const Push* pushes;
    std::size_t push_count;
};

struct Step {
    const char* symbol;
    const char* meaning;
    const char* formula;
    double value;
    const char* unit;
    const char* clause;
};

struct Result {
    const char* subject;
    const char* clause;
    double demand;
    double capacity;
    const char* unit;
    std::int32_t missing_evidence;
    const char* note;
    const Step* steps;
    std::size_t step_count;
};

using Report = std::int32_t (*)(void* host, const Result* result);

struct Check {
    const char* id;
    const char* title;
    const char* clause;
    const char* covers;
    std::int32_t (*run)(const Detail* detail, Report report, void* host);
};

struct Plugin {
    std::uint32_t abi;
    std::size_t plugin_size, check_size, detail_size, anchor_size, push_size, result_size, step_size;
    const char* name;
    const Check* checks;
    std::size_t check_count;
};

}  // namespace toehold::plugin::abi_1
