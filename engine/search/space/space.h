#pragma once
// What a search looks through: a base detail, and axes along which it varies. Every way to take one option of every
// axis is a candidate, and has a number; it becomes a detail by applying the options to the base, axis by axis.
#include "catalog/resolve.h"
#include "format/phrase.h"
#include "search/changes/applied.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace toehold::search {

/// One choice along an axis.
struct Option {
    std::string label;  ///< short, unique along its axis, for tables and files: `6 x 6 in`, `lag-3/8`
    /// Changes the detail to this choice. Refused: it does not go with the choices before it, so that there is no such
    /// candidate. It reads and writes nothing but the detail, for several threads call it at once.
    std::function<Applied(model::BaseDetail&)> apply;
};

struct Axis {
    std::string id;        ///< unique in the space, lower case with hyphens: `plate`, `block-size`
    format::Phrase title;  ///< a few words for the head of a table
    std::vector<Option> options;
};

struct Space {
    catalog::Resolved base;
    std::vector<Axis> axes;  ///< applied in this order
};

/// A candidate's number: the numbers of its options as the digits of one number, the last axis's the fastest.
using Candidate = std::uint64_t;

/// How many candidates there are, those included whose choices do not go together: 1 without axes, 0 where an axis has
/// no option. Throws std::overflow_error beyond 64 bits.
[[nodiscard]] Candidate size(const Space& space);
/// The number of the chosen option along each axis, in the order of the axes. Throws std::out_of_range at or beyond the
/// space's size.
[[nodiscard]] std::vector<std::size_t> choices(const Space& space, Candidate candidate);
/// The way back. Throws std::out_of_range for a choice an axis does not have, or where there is not one for each axis.
[[nodiscard]] Candidate number_of(const Space& space, const std::vector<std::size_t>& choices);
/// The base with the candidate's options applied; absent where they do not go together. Throws as `choices` does.
[[nodiscard]] std::optional<model::BaseDetail> detail_of(const Space& space, Candidate candidate);

/// A text that tells this space from every other: a SHA-256 in hexadecimal of the base as a file, of every axis's id
/// and options' labels, and of what each option alone makes of the base.
[[nodiscard]] std::string fingerprint(const Space& space);

}  // namespace toehold::search
