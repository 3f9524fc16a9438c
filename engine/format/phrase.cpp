#include "format/phrase.h"

#include "format/catalogue.h"
#include "format/figures.h"

#include <fmt/args.h>
#include <fmt/format.h>

#include <cmath>
#include <optional>

namespace toehold::format {
namespace {

std::string dimension_text(double length_in, units::System system) {
    if (system == units::System::us) return units::fraction_in(length_in);
    constexpr double mm_per_in = 25.4;
    return fmt::format("{} mm", std::round(2.0 * length_in * mm_per_in) / 2.0 + 0.0);
}

/// `A`, `A and B`, `A, B and C`.
std::string listed_text(const Listed& listed, const Locale& locale) {
    std::string all;
    const std::size_t count = listed.items.size();
    for (std::size_t i = 0; i < count; ++i) {
        const std::string one = text(listed.items[i], locale);
        if (i == 0) {
            all = one;
        } else if (i + 1 == count) {
            all = text(phrase("{} and {}", all, one), locale);
        } else {
            all += ", " + one;
        }
    }
    return all;
}

void push(fmt::dynamic_format_arg_store<fmt::format_context>& store, const Argument& argument, const Locale& locale) {
    std::visit(
        [&](const auto& value) {
            using Value = std::remove_cvref_t<decltype(value)>;
            if constexpr (std::is_same_v<Value, Quantity>) {
                store.push_back(figure_text(value.value, value.unit, locale.system));
            } else if constexpr (std::is_same_v<Value, Dimension>) {
                store.push_back(dimension_text(value.in, locale.system));
            } else if constexpr (std::is_same_v<Value, Citation>) {
                store.push_back(value.text);
            } else if constexpr (std::is_same_v<Value, Phrase>) {
                store.push_back(text(value, locale));
            } else if constexpr (std::is_same_v<Value, Listed>) {
                store.push_back(listed_text(value, locale));
            } else {
                store.push_back(value);
            }
        },
        argument.value);
}

std::optional<std::string> filled(const std::string& pattern, const Phrase& phrase, const Locale& locale) {
    if (phrase.arguments.empty()) return pattern;
    fmt::dynamic_format_arg_store<fmt::format_context> store;
    for (const Argument& argument : phrase.arguments) push(store, argument, locale);
    try {
        return fmt::vformat(pattern, store);
    } catch (const fmt::format_error&) {
        return std::nullopt;
    }
}

void gather(std::vector<std::string>& all, const Phrase& phrase) {
    for (const Argument& argument : phrase.arguments) {
        if (const auto* const citation = std::get_if<Citation>(&argument.value)) {
            all.push_back(citation->text);
        } else if (const auto* const within = std::get_if<Phrase>(&argument.value)) {
            gather(all, *within);
        } else if (const auto* const listed = std::get_if<Listed>(&argument.value)) {
            for (const Phrase& item : listed->items) gather(all, item);
        }
    }
}

}  // namespace

Phrase::Phrase() = default;
Phrase::Phrase(std::string words, std::vector<Argument> values)
    : pattern(std::move(words)), arguments(std::move(values)) {}
Phrase::Phrase(const Phrase&) = default;
Phrase::Phrase(Phrase&&) noexcept = default;
Phrase& Phrase::operator=(const Phrase&) = default;
Phrase& Phrase::operator=(Phrase&&) noexcept = default;
Phrase::~Phrase() = default;
bool operator==(const Phrase& a, const Phrase& b) { return a.pattern == b.pattern && a.arguments == b.arguments; }
bool operator==(const Listed& a, const Listed& b) { return a.items == b.items; }

Argument::Argument(Value of) : value(std::move(of)) {}
Argument::Argument(const Argument&) = default;
Argument::Argument(Argument&&) noexcept = default;
Argument& Argument::operator=(const Argument&) = default;
Argument& Argument::operator=(Argument&&) noexcept = default;
Argument::~Argument() = default;
bool operator==(const Argument&, const Argument&) = default;

Phrase verbatim(std::string text) { return text.empty() ? Phrase{} : phrase("{}", std::move(text)); }

std::vector<std::string> citations(const Phrase& phrase) {
    std::vector<std::string> all;
    gather(all, phrase);
    return all;
}

std::string text(std::string_view word, const Locale& locale) {
    if (locale.catalogue) {
        if (const std::string* const translated = locale.catalogue->find(word)) return *translated;
    }
    return std::string(word);
}

std::string text(const Phrase& phrase, const Locale& locale) {
    if (phrase.pattern.empty()) return {};
    if (locale.catalogue) {
        if (const std::string* const translated = locale.catalogue->find(phrase.pattern)) {
            if (std::optional<std::string> words = filled(*translated, phrase, locale)) return std::move(*words);
        }
    }
    // A pattern of ours that does not fit its own arguments is shown as it is rather than losing the sentence.
    return filled(phrase.pattern, phrase, locale).value_or(phrase.pattern);
}

std::string english(const Phrase& phrase) { return text(phrase, Locale{}); }

}  // namespace toehold::format
