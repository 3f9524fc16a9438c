#include "model/validate_side_parts.h"

#include "model/validate_framing.h"

#include <string>

namespace toehold::model {
namespace {

using format::phrase;
using format::verbatim;

constexpr double largest_notch_in = 24.0;
constexpr double largest_bracket_in = 48.0;
constexpr double largest_thickness_in = 12.0;

/// A round post touches a flat face along a line, so that it needs a bracket's plate to bear with.
void need_bracket(ProblemList& problems, const SideFastened& mount) {
    if (mount.bracket) return;
    problems.add(phrase("a round post does not bear on a flat face"),
                 phrase("a bracket welded to it, or a square or rectangular post"));
}

void refuse_stub(ProblemList& problems, const std::optional<Stub>& stub) {
    if (!stub) return;
    problems.at("post/stub")
        .add(phrase("a stub stands on a plate; a post fastened by its side has none"), phrase("no stub"));
}

void refuse_notch(ProblemList& problems, const SideFastened& mount) {
    if (!mount.notch) return;
    problems.at("side-fastened/notch").add(phrase("only a wood post is notched"), phrase("no notch"));
}

void check_wood(ProblemList& problems, const WoodPost& post, const SideFastened& mount) {
    if (is_described(post.shoe)) {
        problems.at("post/shoe")
            .add(phrase("a shoe stands on a plate; a post fastened by its side has none"), phrase("no shoe"));
    }
    if (mount.bracket) {
        problems.at("side-fastened/bracket")
            .add(phrase("a bracket is welded to a metal post"), phrase("no bracket with a wood post"));
    }
    if (post.notched != mount.notch.has_value()) {
        problems.at("post").add(post.notched ? phrase("the post is notched, and its notch is not described")
                                             : phrase("the post is said not to be notched, and its notch is described"),
                                phrase("notched=\"yes\" with a notch, or notched=\"no\" without"));
    }
    if (!mount.notch) return;
    problems.at("side-fastened/notch").positive(phrase("depth (in)"), mount.notch->depth_in, post.depth_in);
    if (mount.notch->depth_in == post.depth_in)
        problems.add(phrase("the notch cuts the post through"), phrase("a depth less than the post's"));
    problems.between(phrase("height (in) below the member's top"), mount.notch->below_top_in, -largest_notch_in,
                     mount.post_bottom_below_top_in);
}

/// Which posts may be fastened by their side.
struct SidePostRules {
    ProblemList& problems;
    const SideFastened& mount;

    void operator()(const RectangularTube& tube) const {
        refuse_notch(problems, mount);
        refuse_stub(problems, tube.stub);
    }
    void operator()(const RoundTube& tube) const {
        refuse_notch(problems, mount);
        refuse_stub(problems, tube.stub);
        need_bracket(problems.at("post"), mount);
    }
    void operator()(const SolidBar& bar) const {
        refuse_notch(problems, mount);
        if (bar.round) need_bracket(problems.at("post"), mount);
    }
    void operator()(const TwinBars& /*bars*/) const {
        problems.at("post").add(phrase("twin bars are not fastened by their side"),
                                phrase("a tube, a single bar or a wood post"));
    }
    void operator()(const WoodPost& post) const { check_wood(problems, post, mount); }
};

void check_bracket(ProblemList& problems, const BaseDetail& detail, const SideFastened& mount) {
    const BracketPlate& bracket = *mount.bracket;
    problems.at("side-fastened/bracket");
    problems.positive(phrase("width (in)"), bracket.width_in, largest_bracket_in);
    problems.positive(phrase("height (in)"), bracket.height_in, largest_bracket_in);
    problems.between(phrase("height (in) below the member's top"), bracket.from_top_in, -largest_bracket_in,
                     largest_bracket_in);
    problems.positive(phrase("thickness (in)"), bracket.thickness_in, largest_thickness_in);
    problems.positive(phrase("weld leg (in)"), bracket.weld_leg_in, 2.0);
    problems.positive(phrase("hole over the fastener (in)"), bracket.hole_over_in, 1.0);
    const double post_width_in = shaft(detail.post).width_in;
    if (bracket.width_in < post_width_in) {
        problems.add(phrase("the bracket is narrower than the post"), phrase("at least {} in", brief(post_width_in)),
                     phrase("{} in", brief(bracket.width_in)));
    }
    const double lower_edge_in = bracket.from_top_in + bracket.height_in;
    if (lower_edge_in <= 0.0)
        problems.add(phrase("the bracket ends above the member"), phrase("a lower edge below the member's top"));
    if (mount.post_bottom_below_top_in < lower_edge_in) {
        problems.add(phrase("the post ends above the bracket's lower edge, and its welds run down the whole bracket"),
                     phrase("a post whose bottom is at least {} in below the member's top", brief(lower_edge_in)),
                     phrase("{} in", brief(mount.post_bottom_below_top_in)));
    }
}

void check_layer(ProblemList& problems, const SideLayer& layer) {
    problems.positive(phrase("thickness (in)"), layer.thickness_in, largest_thickness_in);
    const double from_in = layer.from_below_top_in.value_or(0.0);
    problems.between(phrase("from (in) below the member's top"), from_in, 0.0, largest_length_in);
    if (layer.to_below_top_in && !(*layer.to_below_top_in > from_in)) {
        problems.add(phrase("the layer ends above where it begins"), phrase("to lower than from"),
                     phrase("from {} in to {} in", brief(from_in), brief(*layer.to_below_top_in)));
    }
    if (layer.to_below_top_in) {
        problems.positive(phrase("to (in) below the member's top"), *layer.to_below_top_in, largest_length_in);
    }
}

void check_side_layers(ProblemList& problems, const SideFastened& mount) {
    constexpr std::size_t most_layers = 20;
    if (mount.layers.size() > most_layers) {
        problems.at("side-fastened")
            .add(phrase("too many layers"), phrase("at most {}", most_layers),
                 verbatim(std::to_string(mount.layers.size())));
    }
    for (std::size_t index = 0; index < mount.layers.size(); ++index) {
        problems.at("side-fastened/layer[" + std::to_string(index + 1) + "]");
        check_layer(problems, mount.layers[index]);
    }
}

void check_boards(ProblemList& problems, const SideFastened& mount) {
    if (mount.decking) check_decking(problems, "side-fastened/decking", *mount.decking);
    if (!mount.boards_brace_member || (mount.decking && mount.decking->fastening)) return;
    problems.at("side-fastened")
        .add(phrase("boards brace the member only by their fasteners, which are not described"),
             phrase("a decking with its fasteners, or boards-brace-member=\"no\""));
}

}  // namespace

void check_side_parts(ProblemList& problems, const BaseDetail& detail, const SideFastened& mount) {
    std::visit(SidePostRules{problems, mount}, detail.post);
    problems.at("side-fastened").positive(phrase("post bottom (in)"), mount.post_bottom_below_top_in, 240.0);
    if (mount.bracket) check_bracket(problems, detail, mount);
    check_side_layers(problems, mount);
    check_boards(problems, mount);
}

}  // namespace toehold::model
