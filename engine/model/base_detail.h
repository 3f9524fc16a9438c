#pragma once
// A mounted post base, from the guard's top to the floor framing, as plain values. Holds what the user said and
// nothing derived; ids refer to catalog rows, which `catalog::resolve` looks up.
#include "model/basis.h"
#include "model/framing.h"
#include "model/loads.h"
#include "model/mount.h"
#include "model/post.h"
#include "model/remark.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

enum class Occupancy {
    one_and_two_family,
    limited,  ///< Group I-3, F, H or S, not open to the public, fewer than 50 occupants
    other,
};

struct Guard {
    double height_in = 0.0;  ///< top of guard above the walking surface, > 0
    Occupancy occupancy = Occupancy::other;
    std::optional<double> tributary_length_in = std::nullopt;  ///< length of top rail this post takes, > 0
    std::optional<bool> handrail = std::nullopt;  ///< whether its top serves as a handrail; absent: taken as one
    friend bool operator==(const Guard&, const Guard&) = default;
};

/// The guard's own, or the spacing a line load of the file gives; absent: not specified.
[[nodiscard]] std::optional<double> tributary_length_in(const Guard& guard, const Loads& loads);

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

    // Out of line: large, and copied in many files.
    BaseDetail();
    BaseDetail(const BaseDetail&);
    BaseDetail(BaseDetail&&) noexcept;
    BaseDetail& operator=(const BaseDetail&);
    BaseDetail& operator=(BaseDetail&&) noexcept;
    ~BaseDetail();
    friend bool operator==(const BaseDetail&, const BaseDetail&);
};

}  // namespace toehold::model
