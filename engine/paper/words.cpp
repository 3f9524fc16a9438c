#include "paper/words.h"

#include "format/figures.h"
#include "model/base_detail.h"
#include "paper/issue.h"
#include "paper/layout/symbols.h"
#include "resistance/wood/lead_hole.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace toehold::paper {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;
using model::PartId;
using model::PartKind;

Phrase on_paper(Phrase phrase, const Locale& locale);

format::Argument on_paper(const format::Argument& argument, const Locale& locale) {
    if (const auto* quantity = std::get_if<format::Quantity>(&argument.value))
        return {figure(quantity->value, quantity->unit, locale.system)};
    if (const auto* dimension = std::get_if<format::Dimension>(&argument.value))
        return {length(dimension->in, locale.system)};
    if (const auto* inner = std::get_if<Phrase>(&argument.value)) return {on_paper(*inner, locale)};
    if (const auto* list = std::get_if<format::Listed>(&argument.value)) {
        format::Listed result;
        for (const Phrase& item : list->items) result.items.push_back(on_paper(item, locale));
        return {std::move(result)};
    }
    return argument;
}

Phrase on_paper(Phrase phrase, const Locale& locale) {
    for (format::Argument& argument : phrase.arguments) argument = on_paper(argument, locale);
    return phrase;
}

/// `anchors A and B`; empty for a kind of which there is but one.
Phrase several_of(PartKind kind, format::Listed ids) {
    switch (kind) {
        case PartKind::hole:
            return phrase("holes {}", std::move(ids));
        case PartKind::anchor:
            return phrase("anchors {}", std::move(ids));
        case PartKind::shim:
            return phrase("shims {}", std::move(ids));
        case PartKind::block:
            return phrase("blocks {}", std::move(ids));
        case PartKind::joist:
            return phrase("joists {}", std::move(ids));
        case PartKind::rim:
            return phrase("rims {}", std::move(ids));
        case PartKind::ledger:
            return phrase("ledgers {}", std::move(ids));
        case PartKind::beam:
            return phrase("beams {}", std::move(ids));
        default:
            return {};
    }
}

}  // namespace

std::string figure(double value, std::string_view unit, units::System system) {
    const format::Figure figure = format::in_system(value, unit, system);
    const std::string number = layout::written_number(format::number_text(figure.value));
    return figure.unit.empty() ? number : number + " " + layout::written_unit(figure.unit);
}

std::string length(double length_in, units::System system) {
    return system == units::System::us ? units::fraction_in(length_in) : figure(length_in, "in", system);
}

std::string unit_of(std::string_view unit, units::System system) {
    return layout::written_unit(format::in_system(0.0, unit, system).unit);
}

std::string sixty_fourths(double diameter_in) {
    const long all = std::lround(64.0 * diameter_in), inches = all / 64, rest = all % 64;
    if (rest == 0) return fmt::format("{} in", inches);
    const long common = std::gcd(rest, 64L);
    const std::string fraction = fmt::format("{}/{} in", rest / common, 64 / common);
    return inches == 0 ? fraction : fmt::format("{} {}", inches, fraction);
}

std::string bit_words(double low_in, double high_in, units::System system) {
    if (system == units::System::us) return sixty_fourths(resistance::customary_bit_in(low_in, high_in));
    return format::number_text(resistance::customary_bit_mm(low_in, high_in)) + " mm";
}

std::string written(const Phrase& phrase, const Locale& locale) {
    return format::text(on_paper(phrase, locale), locale);
}

std::string sentences(const std::vector<Phrase>& all, const Locale& locale) {
    std::string words;
    for (const Phrase& sentence : all) {
        if (sentence.empty()) continue;
        words += (words.empty() ? "" : " ") + written(sentence, locale);
    }
    return words;
}

format::Listed listed(const std::vector<std::string>& names) {
    format::Listed list;
    for (const std::string& name : names) list.items.push_back(format::verbatim(name));
    return list;
}

Phrase named_together(const std::vector<PartId>& parts) {
    const PartId& first = parts.front();
    const bool alike = std::all_of(parts.begin(), parts.end(), [&first](const PartId& part) {
        return !part.id.empty() && part.piece == model::PartPiece::whole && part.kind == first.kind &&
               part.at_kind == first.at_kind && part.at_id == first.at_id;
    });
    format::Listed ids, names;
    for (const PartId& part : parts) {
        ids.items.push_back(format::verbatim(part.id));
        names.items.push_back(model::part_name(part));
    }
    Phrase together = parts.size() > 1 && alike ? several_of(first.kind, std::move(ids)) : Phrase();
    if (together.empty()) return phrase("{}", std::move(names));
    if (first.at_kind == PartKind::none) return together;
    return phrase("{} at {}", std::move(together), model::part_name({first.at_kind, first.at_id}));
}

std::string project_of(const Issue& issue, const model::BaseDetail& detail) {
    return issue.project.empty() ? detail.project : issue.project;
}

}  // namespace toehold::paper
