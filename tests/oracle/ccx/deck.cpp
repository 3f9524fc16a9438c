#include "oracle/ccx/deck.h"

#include "oracle/ccx/writer.h"

#include <fmt/format.h>

#include <map>
#include <tuple>

namespace toehold::test {
namespace {

// What a spring's table of force reaches to, and by how much it starts early: so every spring works in the first step,
// from which the program's own iteration can go on.
constexpr double table_reach_in = 1.0;
constexpr double early_in = 1e-12;

void write_list(Writer& out, const std::vector<std::size_t>& numbers) {
    for (const std::size_t number : numbers) out.line("{}", number_of_node(number));
}

void write_plate(Writer& out, const Deck& deck) {
    out.line("*NODE");
    for (std::size_t i = 0; i < deck.plate.nodes().size(); ++i) {
        const SolidNode& node = deck.plate.nodes()[i];
        out.line("{},{:.10e},{:.10e},{:.10e}", number_of_node(i), node.x, node.y, node.z);
    }
    out.line("*ELEMENT,TYPE=C3D15,ELSET=PLATE");
    for (std::size_t i = 0; i < deck.plate.wedges().size(); ++i) {
        std::string nodes;
        for (const std::size_t node : deck.plate.wedges()[i]) nodes += fmt::format(",{}", number_of_node(node));
        out.line("{}{}", i + 1, nodes);
    }
    const double shear = 0.5 * deck.modulus_psi / (1.0 + deck.poisson);
    out.line("*MATERIAL,NAME=METAL\n*ELASTIC,TYPE=ENGINEERING CONSTANTS");
    out.line("{0:.10e},{0:.10e},{0:.10e},{1:.10e},{1:.10e},{1:.10e},{2:.10e},{3:.10e}\n{3:.10e},0.", deck.modulus_psi,
             deck.poisson, shear, deck.shear_factor * shear);
    out.line("*SOLID SECTION,ELSET=PLATE,MATERIAL=METAL");
}

void write_body(Writer& out, const Deck& deck) {
    const std::size_t body = number_of_body(deck), rotation = number_of_rotation(deck);
    out.line("*NODE,NSET=READ\n{},0.,0.,0.\n{},0.,0.,0.", body, rotation);
    if (!deck.ring_is_rigid) return;
    out.line("*NSET,NSET=RING");
    write_list(out, deck.plate.ring());
    out.line("*RIGID BODY,NSET=RING,REF NODE={},ROT NODE={}", body, rotation);
    out.line("*BOUNDARY\n{},1,2\n{},3,3", body, rotation);
}

/// One node a spring, which an equation ties to the plate.
void write_spring_nodes(Writer& out, const Deck& deck) {
    for (std::size_t i = 0; i < deck.springs.size(); ++i) {
        const SolidSpring& spring = deck.springs[i];
        const std::size_t own = number_of_spring(deck, i);
        out.line("*NODE,NSET=READ\n{},0.,0.,0.\n*BOUNDARY\n{},1,2", own, own);
        out.line("*EQUATION\n{}\n{},3,1.", spring.row.size() + 1, own);
        for (const auto& [node, weight] : spring.row) {
            out.line("{},3,{:.10e}", number_of_node(node), -spring.scale * weight);
        }
    }
}

using Table = std::tuple<double, double, double>;  // stiffness, sign, gap

void write_table(Writer& out, const Table& table) {
    const auto [stiffness, sign, gap] = table;
    const double start = load_in_deck * gap + early_in;
    const double most = stiffness * (table_reach_in + start);
    if (sign < 0.0) {
        out.line("{:.12e},{:.12e}\n0.,{:.12e}\n0.,{:.12e}", -most, -table_reach_in, start, table_reach_in);
    } else {
        out.line("0.,{:.12e}\n0.,{:.12e}\n{:.12e},{:.12e}", -table_reach_in, -start, most, table_reach_in);
    }
}

/// Springs upright to one node in the ground, which is the kind that follows its table: version 2.20 refuses a table
/// for springs of one node, and takes the wrong tangent of it for springs between two freedoms.
void write_springs(Writer& out, const Deck& deck) {
    if (deck.springs.empty()) return;
    const std::size_t ground = number_of_spring(deck, deck.springs.size());
    out.line("*NODE\n{},0.,0.,-1.\n*BOUNDARY\n{},1,3", ground, ground);
    write_spring_nodes(out, deck);
    std::map<Table, std::vector<std::size_t>> alike;
    for (std::size_t i = 0; i < deck.springs.size(); ++i) {
        const SolidSpring& spring = deck.springs[i];
        alike[{spring.stiffness_lb_per_in, spring.sign, spring.gap_in}].push_back(i);
    }
    std::size_t kind = 0;
    for (const auto& [table, springs] : alike) {
        out.line("*ELEMENT,TYPE=SPRINGA,ELSET=SPRINGS{}", ++kind);
        for (const std::size_t i : springs) {
            out.line("{},{},{}", deck.plate.wedges().size() + i + 1, ground, number_of_spring(deck, i));
        }
        out.line("*SPRING,ELSET=SPRINGS{},NONLINEAR", kind);
        write_table(out, table);
    }
}

void write_loads(Writer& out, const Deck& deck) {
    out.line("*CLOAD");
    const auto force = [&](std::size_t node, int freedom, double value) {
        if (value != 0.0) out.line("{},{},{:.10e}", node, freedom, load_in_deck * value);
    };
    force(number_of_body(deck), 3, deck.load.fz_lb);
    force(number_of_rotation(deck), 1, deck.load.mx_lb_in);
    force(number_of_rotation(deck), 2, deck.load.my_lb_in);
    for (const NodeForce& single : deck.forces) force(number_of_node(single.node), 3, single.fz_lb);
}

}  // namespace

std::string text_of(const Deck& deck) {
    Writer out;
    write_plate(out, deck);
    write_body(out, deck);
    write_springs(out, deck);
    if (!deck.fixed.empty()) {
        out.line("*NSET,NSET=FIXED");
        write_list(out, deck.fixed);
        out.line("*BOUNDARY\nFIXED,1,3");
    }
    for (const NodeForce& single : deck.forces) out.line("*NSET,NSET=READ\n{}", number_of_node(single.node));
    out.line("*STEP,NLGEOM,INC=100\n*STATIC\n1.,1.");
    // Tighter than the program's own limits, which would accept a set of working springs that is not yet the last.
    out.line("*CONTROLS,PARAMETERS=TIME INCREMENTATION\n40,60,9,100,10,4,,40\n.25,.5,.75,.85,,,1.5");
    out.line("*CONTROLS,PARAMETERS=FIELD\n1.e-7,1.e-4,,,1.e-7");
    write_loads(out, deck);
    out.line("*NODE PRINT,NSET=READ\nU\n*END STEP");
    return out.take();
}

std::size_t number_of_node(std::size_t node) { return node + 1; }
std::size_t number_of_body(const Deck& deck) { return deck.plate.nodes().size() + 1; }
std::size_t number_of_rotation(const Deck& deck) { return deck.plate.nodes().size() + 2; }
std::size_t number_of_spring(const Deck& deck, std::size_t spring) { return deck.plate.nodes().size() + 3 + spring; }

}  // namespace toehold::test
