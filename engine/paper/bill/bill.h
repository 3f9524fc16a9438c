#pragma once
// The bill of materials of a project, or of a detail as a project of one post: what is cut, bought and carried to the
// site, with quantities. Pure sums over what the file describes; rails, infill, joists and rims are not in it.
#include "format/phrase.h"
#include "model/project.h"
#include "review/project_review.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::paper {

enum class BillKind {
    post,
    plate,       ///< base plate, cut to the cutting file
    bracket,     ///< bracket plate of a post on a member's side
    backing,     ///< plate, angle or channel under the wood
    bolt_plate,  ///< plate under a head or a nut of a post on a member's side
    packing,     ///< spacers through the boards
    anchor,      ///< screws and bolts through the plate
    washer,
    block,
    connector,  ///< hardware and angles at the ends of blocks and joists
    fastener,   ///< nails, screws and bolts at the ends of blocks and joists
};

struct BillItem {
    BillKind kind = BillKind::post;
    format::Phrase name;      ///< what to cut or buy, with its size
    format::Phrase material;  ///< empty: the name says it, or nothing does
    std::size_t quantity = 0;
    std::optional<double> length_in = std::nullopt;  ///< of one, > 0
    std::optional<double> weight_lb = std::nullopt;  ///< of one; computed for plates alone
    std::vector<std::string> where = {};             ///< marks of posts or ids of members, each once
};

struct Bill {
    std::string project;                           ///< its name
    std::vector<BillItem> items;                   ///< by kind; alike ones together
    std::vector<format::Phrase> notes;             ///< what is not in it, and how lengths are meant
    [[nodiscard]] double plate_weight_lb() const;  ///< of all plates and backing pieces
};

/// `posts`: every post of the project with its catalog rows, in the project's order.
[[nodiscard]] Bill bill_of_materials(const model::Project& project, const std::vector<review::ResolvedPost>& posts,
                                     units::System system);

/// For a terminal, at most 100 columns.
[[nodiscard]] std::string bill_text(const Bill& bill, const format::Locale& locale);
/// For a spreadsheet, in English, in the form of export/csv/review_csv.h.
[[nodiscard]] std::string bill_csv(const Bill& bill);

}  // namespace toehold::paper
