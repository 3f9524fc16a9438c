#pragma once
// What reads the values of one key into ranges: each reader refuses by a problem what it does not take, and leaves the
// ranges alone then.
#include "catalog/catalog.h"
#include "search/ranges/ranges.h"
#include "search/ranges/values.h"

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace toehold::search {

/// What is read into, and what was wrong.
struct Reader {
    std::string_view key;
    const catalog::Catalog& catalog;
    model::Problems problems = {};

    void refuse(const std::string& found, format::Phrase accepted, format::Phrase message) {
        problems.push_back({{}, 0, std::string(key), format::verbatim(found), std::move(accepted), std::move(message)});
    }
};

/// Each value once, for an axis has one option of a label; none where they are too many.
template <class Value>
void keep(Reader& reader, const std::vector<Value>& values, std::vector<Value>& into) {
    std::vector<Value> once;
    for (const Value& value : values) {
        if (std::find(once.begin(), once.end(), value) == once.end()) once.push_back(value);
        if (once.size() > most_values) break;  // how many more is not counted: steps can be a hundred thousand
    }
    if (once.size() > most_values) {
        reader.refuse({}, format::phrase("at most {} values", most_values),
                      format::phrase("more than {} values for one range", most_values));
        return;
    }
    into = std::move(once);
}

/// Every value read with `read`, which gives none of what it does not accept.
template <class Value, class Read>
void read_each(Reader& reader, std::string_view values, std::vector<Value>& into, const format::Phrase& accepted,
               Read read) {
    std::vector<Value> all;
    for (const std::string& text : between_commas(values)) {
        std::vector<Value> some = text.empty() ? std::vector<Value>{} : read(text);
        if (some.empty()) {
            reader.refuse(text, accepted, format::phrase("not a value of this range"));
            return;
        }
        all.insert(all.end(), std::make_move_iterator(some.begin()), std::make_move_iterator(some.end()));
    }
    keep(reader, all, into);
}

template <class Value>
std::vector<Value> one_or_none(const std::optional<Value>& value) {
    return value ? std::vector<Value>{*value} : std::vector<Value>{};
}

// Shared by several keys.
void read_lengths(Reader& reader, std::string_view values, std::vector<double>& into);
void read_lumber_sizes(Reader& reader, std::string_view values, std::vector<std::string>& into);

// Of a post on a member's side.
void read_plies(Reader& reader, std::string_view values, Ranges& ranges);
/// `as-is` or a size of lumber.
void read_optional_blocks(Reader& reader, std::string_view values, std::vector<std::string>& into);
/// `as-is` or `hardware` with its least force.
void read_hardware(Reader& reader, std::string_view values, std::vector<double>& into);
void read_notches(Reader& reader, std::string_view values, Ranges& ranges);
void read_heights(Reader& reader, std::string_view values, Ranges& ranges);
void read_heads(Reader& reader, std::string_view values, Ranges& ranges);

}  // namespace toehold::search
