#pragma once
// A guard post's job as it is told on the telephone: how high, for whom, which post, which deck, where the post stands.
// `start` makes a whole detail of it: plate, anchors, blocks, end connections, supports. What was not asked is assumed,
// and every assumed value is listed with the reason. The detail need not hold; it is the one most likely to.
//
// Engine units: inches. Nothing is read from or written to a file here; see job/file.h.
#include "catalog/catalog.h"
#include "format/phrase.h"
#include "model/base_detail.h"
#include "model/problem.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::job {

/// Where the post stands on its framing.
enum class Place {
    between_joists,  ///< in the middle of a joist bay, behind the rim
    over_a_joist,    ///< its axis over a joist
    beside_the_rim,  ///< in the middle of a bay, the outer block against the rim
    corner,          ///< beside the rim, in the last bay before a doubled edge joist
    cantilever,      ///< in the middle of a bay at the ends of joists that reach past their beam
    deck_side,       ///< not on the deck: bolted to the outside of the rim
};

/// The post as people order it: a section and what it is made of. `read_post` says which texts it takes.
struct PostOrder {
    /// `2x2x1/8` (width x depth x wall: a tube), `1 1/2x1 1/2` (a solid bar), `round 1.9x0.145`, `4x4` (lumber).
    std::string section;
    /// `steel`, `stainless`, `aluminum`, `wood`, or the id of a metal in the catalog.
    std::string material;
    friend bool operator==(const PostOrder&, const PostOrder&) = default;
};

/// The answers. What is absent was not asked, and `start` assumes it.
struct Job {
    double guard_height_in = 36.0;  ///< top of the guard above the walking surface, 12 to 120
    model::Occupancy occupancy = model::Occupancy::one_and_two_family;
    PostOrder post{"2x2x3/16", "steel"};
    std::string decking = "wood-southern-pine";  ///< id of a row of the decking catalog that is no packing or shim
    std::string joist_size = "2x10";             ///< nominal, see model/lumber_size.h; 2x8 to 4x16
    double joist_spacing_in = 16.0;              ///< center to center, 12 to 32
    Place place = Place::between_joists;

    std::optional<model::BuildingCode> code = {};       ///< absent: IRC 2021 for a dwelling, else IBC 2021
    std::optional<double> tributary_length_in = {};     ///< of top rail; required where `needs_tributary_length`
    std::optional<bool> handrail = {};                  ///< absent: taken as one
    std::optional<std::string> decking_thickness = {};  ///< `5/4` or another board's nominal thickness, or a length
    std::optional<std::string> species = {};            ///< of framing and wood post, catalog id; absent: southern pine
    std::optional<std::string> grade = {};              ///< catalog id; absent: No. 2
    std::optional<bool> treated = {};                   ///< absent: treated
    std::optional<double> joist_span_in = {};           ///< ledger to beam, 48 to 240; absent: 8 ft or less
    std::optional<bool> access_below = {};              ///< whether nuts can be turned below the deck; absent: they can
    friend bool operator==(const Job&, const Job&) = default;
};

/// Whether the code asks for a load along the rail, so that the length of rail this post takes must be told.
[[nodiscard]] bool needs_tributary_length(const Job& job);

/// One value nobody told, as it stands in the file.
struct Assumed {
    std::string element;    ///< path as in `model::Problem`: `framing/joists`, `framing/block[B1]/end[to]/connector`
    std::string attribute;  ///< of that element: `species`; empty: the whole element
    format::Phrase value;   ///< as the file has it: `southern-pine`, `0.5 in`; of a whole element, in a few words
    format::Phrase why;     ///< one sentence, and what would change it
    friend bool operator==(const Assumed&, const Assumed&) = default;
};

struct Started {
    model::BaseDetail detail;
    std::vector<Assumed> assumed;  ///< in the order of the file
};

/// What of the job no detail can be made of, each with what would be accepted. `element` is the question's id, such as
/// `joist-size` (job/questions.h). Empty: `start` succeeds, and its detail validates and resolves.
[[nodiscard]] model::Problems problems(const Job& job, const catalog::Catalog& catalog);

/// Throws std::invalid_argument for a job that has problems.
[[nodiscard]] Started start(const Job& job, const catalog::Catalog& catalog);

}  // namespace toehold::job
