#pragma once
// Every piece of framing in plan, whatever it is called: blocks, joists and rims as one list of members.
#include "model/framing.h"
#include "model/part.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

enum class MemberKind { block, joist, rim };

struct Member {
    MemberKind kind = MemberKind::block;
    std::size_t index = 0;  ///< in the list of its kind
    std::string id;
    PlanAxis along = PlanAxis::x;  ///< its length, and its grain
    double from_in = 0.0, to_in = 0.0;
    double across_in = 0.0;  ///< of its centre line
    double width_in = 0.0;   ///< in plan, all pieces together
    double depth_in = 0.0;   ///< of all pieces of a stack together
    int plies = 1;
    std::string species, grade;
    bool length_stated = true;  ///< false: a joist of which only the place is known; it runs on beyond any plate
    int stack = 1;              ///< pieces one on another
    bool stack_fastened = false;
};

/// Blocks, then joists, then rims, each in the file's order. What the whole engine means by a member's number.
[[nodiscard]] std::vector<Member> members(const Framing& framing);
/// One of them; throws std::out_of_range.
[[nodiscard]] Member member(const Framing& framing, std::size_t index);
/// The member with this id; absent when none has it.
[[nodiscard]] std::optional<std::size_t> find_member(const Framing& framing, const std::string& id);
/// The joist with this id; nullptr when none has it.
[[nodiscard]] const Joist* find_joist(const Framing& framing, const std::string& id);
/// `B1`, `B2` ... after the letter: the first that nothing in the framing has.
[[nodiscard]] std::string free_member_id(const Framing& framing, const std::string& letter);

[[nodiscard]] double length_in(const Member& member);
[[nodiscard]] double ply_width_in(const Member& member);
/// Of one piece of a stack.
[[nodiscard]] double piece_depth_in(const Member& member);
/// As results and links name it.
[[nodiscard]] PartId part_of(const Member& member);
[[nodiscard]] PartId part_of(const JoistSupport& support);
/// `block`, `joist`, `rim`.
[[nodiscard]] const char* name(MemberKind kind);

/// How far an end may stand off the face of what holds it, and still meet it.
inline constexpr double end_fit_in = 0.25;
/// Whether the end of `member` at `end_in` meets the near face of `holder`, which runs across it.
[[nodiscard]] bool meets(const Member& member, double end_in, bool upper_end, const Member& holder);

/// Joists whose length is not stated run on to here.
inline constexpr double beyond_any_plate_in = 1e4;

}  // namespace toehold::model
