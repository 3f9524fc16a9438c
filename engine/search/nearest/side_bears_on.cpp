// Which axes bear on what limits a post on a member's side.
#include "search/nearest/bears_on.h"

namespace toehold::search {

/// The first whose beginning fits decides, so the longer stand before the shorter.
const std::vector<AxisRule>& side_rules() {
    static const std::vector<AxisRule> all{
        {"side-bracket", {"bracket", "heights", "anchor", "ties"}},
        {"side-hole", {"anchor"}},
        {"side-tube-wall", {"heights", "ties", "anchor"}},
        {"side-end-grain", {"rim-ends", "behind", "ties"}},
        {"side-heads", {"head"}},
        {"side-head-on-weld", {"anchor", "heights"}},
        {"side-no-bottom", {"heights", "bottom"}},
        {"side-notched", {"notch"}},
        {"side-one-member", {"rim-ends", "ties", "behind"}},
        {"side-dissimilar", {"anchor"}},
        {"side-post-spacing", {"heights", "bottom", "anchor", "post-size"}},
        {"side-post-bearing", {"bottom", "post-size", "heights"}},
        {"side-post", {"post-size", "notch", "anchor", "heights", "ties"}},
        {"side-head", {"head", "anchor", "heights", "ties"}},
        {"post-bending", {"post-size", "notch", "anchor"}},
        {"tie", {"ties"}},
        {"anchor-steel", {"anchor", "heights", "bottom", "ties"}},
        {"anchor-spacing", {"heights", "anchor", "behind"}},
        {"anchor-seat", {"heights", "length", "anchor", "behind"}},
        {"anchor-penetration", {"length", "anchor", "plies", "behind"}},
        {"anchor-lateral", {"anchor", "length", "heights", "plies"}},
        {"anchor", {"anchor", "length", "heights", "ties", "bottom"}},
        {"head-pull-through", {"head", "anchor", "heights", "ties"}},
        {"washer-bearing", {"backing", "head", "heights", "bottom", "ties", "anchor"}},
        {"bearing", {"bottom", "post-size", "heights", "plies"}},
        {"member-end", {"rim-ends", "ends", "behind", "ties", "next-joist"}},
        {"member-tension-perp", {"behind", "plies", "heights", "ties"}},
        {"member-shear-at", {"behind", "plies", "heights"}},
        {"member", {"plies", "behind", "next-joist", "ties", "rim-ends"}},
        {"fastener-rows", {"rim-ends", "ends"}},
        {"joist-roll", {"next-joist", "ends", "rim-ends"}},
        {"deck", {"next-joist", "ends", "rim-ends"}},
        {"end-grain", {"rim-ends", "ends", "ties"}},
        {"no-path", {"rim-ends", "ends", "next-joist", "behind", "ties"}},
        {"guard-deflection", {"post-size", "heights", "bottom", "plies", "rim-ends", "ties", "next-joist"}},
        {"notched", {"notch"}},
        {"no-equilibrium", {"heights", "ties", "bottom"}},
        {"bolt-too-short", {"anchor"}},
        {"bolt-without-washer", {"head", "backing"}},
        {"washer", {"head", "backing"}},
        {"head", {"head"}},
        {"wrench", {"anchor", "heights"}},
        {"dissimilar", {"anchor"}},
    };
    return all;
}

}  // namespace toehold::search
