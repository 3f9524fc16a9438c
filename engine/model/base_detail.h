#pragma once
// A mounted post base, from the guard's top to the floor framing, as plain values. Holds what the user said and
// nothing derived; ids refer to catalog rows, which `catalog::resolve` looks up.
#include "model/basis.h"
#include "model/framing.h"
#include "model/loads.h"
#include "model/mount.h"
#include "model/post.h"
#include "model/remark.h"

#include <string>
#include <vector>

namespace toehold::model {

enum class Occupancy { one_and_two_family, other };

struct Guard {
    double height_in = 0.0;  ///< top of guard above the walking surface, > 0
    Occupancy occupancy = Occupancy::other;
    friend bool operator==(const Guard&, const Guard&) = default;
};

struct BaseDetail {
    std::string name;
    std::string note;  ///< free text; demo details say here that they are invented
    Guard guard;
    Post post;
    Mount mount;
    Framing framing;
    Loads loads;
    Basis basis;
    std::string project = {};          ///< what the detail belongs to; may be empty
    std::vector<Remark> remarks = {};  ///< of a reviewer
    friend bool operator==(const BaseDetail&, const BaseDetail&) = default;
};

/// Height of the guard's top above the bearing plane (the plate's underside), in.
[[nodiscard]] double lever_height_in(const BaseDetail& detail);
/// Everything between the plate's underside and the top of the blocking, in.
[[nodiscard]] double thickness_in(const Layers& layers);
/// Whether any anchor has a stated preload.
[[nodiscard]] bool preloaded(const BaseDetail& detail);
/// The group that gives the hole its anchor; nullptr when none does.
[[nodiscard]] const AnchorGroup* anchor_group(const BaseDetail& detail, const std::string& hole_id);

}  // namespace toehold::model
