#include "units/unit_table.h"

#include <numbers>
#include <string>

namespace toehold::units {
namespace {

// Letter case is part of an SI name (mN is not MN) and is free in a US one.
enum class Case { free, exact };

struct Row {
    std::string_view name;
    Kind kind;
    Case letters;
    Unit unit;
};

constexpr Row rows[] = {
    {"in", Kind::length, Case::free, {}},
    {"inch", Kind::length, Case::free, {}},
    {"inches", Kind::length, Case::free, {}},
    {"\"", Kind::length, Case::free, {}},
    {"ft", Kind::length, Case::free, {12.0, 1.0}},
    {"foot", Kind::length, Case::free, {12.0, 1.0}},
    {"feet", Kind::length, Case::free, {12.0, 1.0}},
    {"'", Kind::length, Case::free, {12.0, 1.0}},
    {"mm", Kind::length, Case::exact, {1.0, mm_per_in}},
    {"cm", Kind::length, Case::exact, {10.0, mm_per_in}},
    {"m", Kind::length, Case::exact, {1000.0, mm_per_in}},

    {"lb", Kind::force, Case::free, {}},
    {"lbs", Kind::force, Case::free, {}},
    {"lbf", Kind::force, Case::free, {}},
    {"kip", Kind::force, Case::free, {1000.0, 1.0}},
    {"kips", Kind::force, Case::free, {1000.0, 1.0}},
    {"N", Kind::force, Case::exact, {1.0, newton_per_lb}},
    {"kN", Kind::force, Case::exact, {1000.0, newton_per_lb}},

    {"psi", Kind::stress, Case::free, {}},
    {"ksi", Kind::stress, Case::free, {1000.0, 1.0}},
    {"kPa", Kind::stress, Case::exact, {0.001, mpa_per_psi}},
    {"MPa", Kind::stress, Case::exact, {1.0, mpa_per_psi}},
    {"N/mm2", Kind::stress, Case::exact, {1.0, mpa_per_psi}},
    {"GPa", Kind::stress, Case::exact, {1000.0, mpa_per_psi}},

    {"lb-in", Kind::moment, Case::free, {}},
    {"lbf-in", Kind::moment, Case::free, {}},
    {"in-lb", Kind::moment, Case::free, {}},
    {"lb-ft", Kind::moment, Case::free, {12.0, 1.0}},
    {"lbf-ft", Kind::moment, Case::free, {12.0, 1.0}},
    {"ft-lb", Kind::moment, Case::free, {12.0, 1.0}},
    {"kip-in", Kind::moment, Case::free, {1000.0, 1.0}},
    {"kip-ft", Kind::moment, Case::free, {12000.0, 1.0}},
    {"N-mm", Kind::moment, Case::exact, {0.001, newton_metre_per_lb_in}},
    {"N-m", Kind::moment, Case::exact, {1.0, newton_metre_per_lb_in}},
    {"kN-m", Kind::moment, Case::exact, {1000.0, newton_metre_per_lb_in}},

    {"lb/in", Kind::force_per_length, Case::free, {}},
    {"lbf/in", Kind::force_per_length, Case::free, {}},
    {"lb/ft", Kind::force_per_length, Case::free, {1.0, 12.0}},
    {"lbf/ft", Kind::force_per_length, Case::free, {1.0, 12.0}},
    {"plf", Kind::force_per_length, Case::free, {1.0, 12.0}},
    {"kip/in", Kind::force_per_length, Case::free, {1000.0, 1.0}},
    {"kip/ft", Kind::force_per_length, Case::free, {1000.0, 12.0}},
    {"N/m", Kind::force_per_length, Case::exact, {0.001, newton_per_mm_per_lb_per_in}},
    {"N/mm", Kind::force_per_length, Case::exact, {1.0, newton_per_mm_per_lb_per_in}},
    {"kN/m", Kind::force_per_length, Case::exact, {1.0, newton_per_mm_per_lb_per_in}},
    {"kN/mm", Kind::force_per_length, Case::exact, {1000.0, newton_per_mm_per_lb_per_in}},

    {"psi/in", Kind::bed_stiffness, Case::free, {}},
    {"lb/in3", Kind::bed_stiffness, Case::free, {}},
    {"ksi/in", Kind::bed_stiffness, Case::free, {1000.0, 1.0}},
    {"MPa/mm", Kind::bed_stiffness, Case::exact, {1.0, mpa_per_mm_per_psi_per_in}},
    {"N/mm3", Kind::bed_stiffness, Case::exact, {1.0, mpa_per_mm_per_psi_per_in}},

    {"deg", Kind::angle, Case::free, {}},
    {"degree", Kind::angle, Case::free, {}},
    {"degrees", Kind::angle, Case::free, {}},
    {"\u00B0", Kind::angle, Case::free, {}},
    {"rad", Kind::angle, Case::free, {180.0, std::numbers::pi}},

    {"psf", Kind::pressure, Case::free, {}},
    {"lb/ft2", Kind::pressure, Case::free, {}},
    {"psi", Kind::pressure, Case::free, {144.0, 1.0}},
    {"Pa", Kind::pressure, Case::exact, {0.001, kpa_per_psf}},
    {"kPa", Kind::pressure, Case::exact, {1.0, kpa_per_psf}},
    {"kN/m2", Kind::pressure, Case::exact, {1.0, kpa_per_psf}},

    {"ft2", Kind::area, Case::free, {}},
    {"sq-ft", Kind::area, Case::free, {}},
    {"in2", Kind::area, Case::free, {1.0, 144.0}},
    {"m2", Kind::area, Case::exact, {1.0, m2_per_ft2}},
};

struct Spelling {
    std::string_view written, meant;
};
constexpr Spelling spellings[] = {{" ", "-"}, {"*", "-"}, {"\u00B7", "-"}, {"\u00B2", "2"}, {"\u00B3", "3"}};

std::string plainly_spelled(std::string_view name) {
    std::string plain(name);
    for (const Spelling& spelling : spellings) {
        for (auto at = plain.find(spelling.written); at != std::string::npos;
             at = plain.find(spelling.written, at + 1)) {
            plain.replace(at, spelling.written.size(), spelling.meant);
        }
    }
    return plain;
}

char lowered(char letter) { return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter; }

bool same_name(std::string_view written, const Row& row) {
    if (row.letters == Case::exact) return written == row.name;
    if (written.size() != row.name.size()) return false;
    for (std::size_t index = 0; index < written.size(); ++index) {
        if (lowered(written[index]) != row.name[index]) return false;
    }
    return true;
}

}  // namespace

std::optional<Unit> find_unit(std::string_view name, Kind kind) {
    const std::string plain = plainly_spelled(name);
    for (const Row& row : rows) {
        if (row.kind == kind && same_name(plain, row)) return row.unit;
    }
    return std::nullopt;
}

}  // namespace toehold::units
