#pragma once
// Words that several papers have in common, and how phrases become words on paper.
#include "format/phrase.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::model {
struct BaseDetail;
struct PartId;
}  // namespace toehold::model

namespace toehold::paper {

struct Issue;

/// Number and unit as they are written by hand, in the reader's system: `27.5 lb·in`, `2.90·10⁷ psi`.
[[nodiscard]] std::string figure(double value, std::string_view unit, units::System system);
/// `3 3/8 in`; in SI to four digits, since a paper shows the lengths that were calculated with.
[[nodiscard]] std::string length(double length_in, units::System system);
/// The unit alone, in the reader's system.
[[nodiscard]] std::string unit_of(std::string_view unit, units::System system);

/// To the nearest 1/64 in, as bits come: `7/16 in`, `1 1/16 in`.
[[nodiscard]] std::string sixty_fourths(double diameter_in);
/// The customary bit between two diameters, in: `9/32 in`, `7 mm`.
[[nodiscard]] std::string bit_words(double low_in, double high_in, units::System system);

/// A phrase in the reader's language; its quantities are written by `figure`, its dimensions by `length`.
[[nodiscard]] std::string written(const format::Phrase& phrase, const format::Locale& locale);
/// Whole sentences one after the other; empty ones are left out.
[[nodiscard]] std::string sentences(const std::vector<format::Phrase>& all, const format::Locale& locale);

/// Names that are nobody's to translate, as `A, B and C` in a phrase.
[[nodiscard]] format::Listed listed(const std::vector<std::string>& names);
/// Names of parts; several of one kind together: `anchors A, B and C`, `joists J1 and J2 at beam S2`. Not empty.
[[nodiscard]] format::Phrase named_together(const std::vector<model::PartId>& parts);

/// Project of the issue, or the detail's own; may be empty.
[[nodiscard]] std::string project_of(const Issue& issue, const model::BaseDetail& detail);

}  // namespace toehold::paper
