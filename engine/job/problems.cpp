// What no detail can be made of.
#include "job/design.h"
#include "job/job.h"
#include "job/post_order.h"
#include "model/lumber_size.h"

#include <algorithm>

namespace toehold::job {
namespace {

using format::Phrase;
using format::phrase;
using format::verbatim;

class Looked {
  public:
    Looked(const Job& job, const catalog::Catalog& catalog) : job_(job), catalog_(catalog) {}

    model::Problems all() {
        look_at_guard();
        look_at_post();
        look_at_boards();
        look_at_joists();
        if (problems_.empty() && job_.place == Place::deck_side) look_at_side();
        if (problems_.empty() && job_.place != Place::deck_side) look_at_room();
        return std::move(problems_);
    }

  private:
    void add(const char* question, Phrase message, Phrase accepted, Phrase found = {}) {
        problems_.push_back({{}, 0, question, std::move(found), std::move(accepted), std::move(message)});
    }

    void between(const char* question, Phrase what, double value, double least, double most) {
        if (value >= least && value <= most) return;
        add(question, std::move(what), phrase("{} to {} in", least, most), phrase("{} in", value));
    }

    void look_at_guard() {
        between("height", phrase("a guard is not of this height"), job_.guard_height_in, 12.0, 120.0);
        if (job_.tributary_length_in) {
            between("tributary-length", phrase("a post does not take this length of rail"), *job_.tributary_length_in,
                    12.0, 240.0);
        } else if (needs_tributary_length(job_)) {
            add("tributary-length",
                phrase("the code asks for a load along the rail, and the length this post takes is "
                       "not told"),
                phrase("the spacing of the posts, such as 5 ft"));
        }
    }

    void look_at_post() {
        if (is_wood(job_.post)) {
            look_at_wood_post();
            return;
        }
        if (metal_of(job_.post, catalog_).empty()) {
            add("post", phrase("the post's material is none whose strength is known"), accepted_posts(),
                verbatim(job_.post.material));
        }
        const std::optional<model::Post> section = metal_section(job_.post.section);
        if (!section) {
            add("post", phrase("the post's section is not read"), accepted_posts(), verbatim(job_.post.section));
            return;
        }
        const model::Footprint print = model::footprint(*section);
        between("post", phrase("a guard post is not of this width"), std::min(print.width_in, print.depth_in), 0.5,
                8.0);
        between("post", phrase("a guard post is not of this depth"), std::max(print.width_in, print.depth_in), 0.5,
                8.0);
    }

    void look_at_wood_post() {
        const std::optional<model::DressedSize> size = model::dressed_size(job_.post.section);
        if (!size || std::min(size->first_in, size->second_in) < 3.0 ||
            std::max(size->first_in, size->second_in) > 8.0) {
            add("post", phrase("no wood post is of this size"), phrase("4x4, 4x6, 6x6, 8x8"),
                verbatim(job_.post.section));
            return;
        }
        look_at_wood("post", *size);
    }

    void look_at_boards() {
        const catalog::DeckingMaterial* const boards = catalog::find(catalog_.decking, job_.decking);
        if (boards == nullptr) {
            add("decking", phrase("no decking has this id"), phrase("a decking of `toehold list decking`"),
                verbatim(job_.decking));
        }
        if (!job_.decking_thickness) return;
        const std::optional<Boards> told = boards_of(*job_.decking_thickness);
        if (!told || told->thickness_in > 4.0) {
            add("decking-thickness", phrase("boards are not of this thickness"), phrase("5/4, 2x6, or such as 0.95 in"),
                verbatim(*job_.decking_thickness));
        }
    }

    void look_at_joists() {
        const std::optional<model::DressedSize> size = model::dressed_size(job_.joist_size);
        constexpr double least_depth_in = 7.0, most_depth_in = 15.5, most_width_in = 3.5;
        if (!size || size->first_in > most_width_in || size->first_in < 1.5 || size->second_in < least_depth_in ||
            size->second_in > most_depth_in) {
            add("joist-size", phrase("no detail is made for joists of this size"),
                phrase("2x8, 2x10, 2x12, 3x10, 4x12"), verbatim(job_.joist_size));
            return;
        }
        between("joist-spacing", phrase("joists are not so spaced"), job_.joist_spacing_in, 12.0, 32.0);
        if (job_.joist_span_in)
            between("joist-span", phrase("joists do not span so far"), *job_.joist_span_in, 48.0, 240.0);
        look_at_wood("joist-size", *size);
        if (const auto block = model::dressed_size(block_size(job_.joist_size))) look_at_wood("joist-size", *block);
    }

    /// The plate goes no further than there are blocks for its anchors, and the foot is welded within it.
    void look_at_room() {
        constexpr double beside_foot_in = 0.5;
        const Design design = design_for(job_, catalog_);
        const double room_in = 2.0 * (design.row_x_in + plate_edge_in - beside_foot_in);
        const model::Footprint foot = model::footprint(design.post);
        if (foot.width_in <= room_in) return;
        add("post", phrase("so wide a post leaves no room for its anchors between these joists"),
            phrase("a post of at most {} in, its shoe counted, or joists further apart", room_in),
            phrase("{} in", foot.width_in));
    }

    /// Bolts go through post and rim, and the post's face bears on it.
    void look_at_side() {
        if (!job_.access_below.value_or(true)) {
            add("access-below", phrase("a post on the rim is bolted through it, and its nuts are reached from below"),
                phrase("yes, or a place on top of the deck"), phrase("no"));
        }
        const Design design = design_for(job_, catalog_);
        const double width_in = model::shaft(design.post).width_in, most_in = 6.0;
        if (width_in > most_in)
            add("post", phrase("so wide a post is not bolted to a rim"), phrase("a post of at most {} in", most_in),
                phrase("{} in", width_in));
    }

    /// Species and grade are told once, and every piece of wood is of them.
    void look_at_wood(const char* question, const model::DressedSize& size) {
        if (catalog::find(catalog_.species, species_of(job_)) == nullptr) {
            add("species", phrase("no species has this id"), phrase("a species of `toehold list species`"),
                verbatim(species_of(job_)));
        } else if (catalog::find_grade(
                       catalog_, species_of(job_), grade_of(job_),
                       {std::min(size.first_in, size.second_in), std::max(size.first_in, size.second_in)}) == nullptr) {
            add(job_.grade ? "grade" : question,
                phrase("{} has no grade {} in a piece of this size", species_of(job_), grade_of(job_)),
                phrase("a grade of `toehold list grades`"), phrase("{} x {} in", size.first_in, size.second_in));
        }
    }

    const Job& job_;
    const catalog::Catalog& catalog_;
    model::Problems problems_;
};

}  // namespace

model::Problems problems(const Job& job, const catalog::Catalog& catalog) { return Looked(job, catalog).all(); }

}  // namespace toehold::job
