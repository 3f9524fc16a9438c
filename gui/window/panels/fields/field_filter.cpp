#include "window/panels/fields/field_filter.h"

#include <algorithm>
#include <sstream>

namespace toehold::window {
namespace {

std::string lower(std::string text) {
    for (char& letter : text) {
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    }
    return text;
}

bool of_selection(const editing::Field& field, const std::vector<model::PartId>& selection) {
    return std::any_of(selection.begin(), selection.end(), [&field](const model::PartId& part) {
        return part == field.part || std::find(field.also.begin(), field.also.end(), part) != field.also.end();
    });
}

bool same_choices(const std::vector<editing::Choice>& one, const std::vector<editing::Choice>& other) {
    return std::equal(one.begin(), one.end(), other.begin(), other.end(), [](const auto& left, const auto& right) {
        return left.value == right.value && left.label == right.label;
    });
}

}  // namespace

bool holds_words(const std::string& text, const std::string& wanted) {
    const std::string all = lower(text);
    std::istringstream words(lower(wanted));
    for (std::string word; words >> word;) {
        if (all.find(word) == std::string::npos) return false;
    }
    return true;
}

std::vector<editing::Field> filtered(const std::vector<editing::Field>& fields, const FieldFilter& filter) {
    std::vector<editing::Field> first, others;
    for (const editing::Field& field : fields) {
        if (!filter.text.empty()) {
            const std::string all = format::text(field.group, filter.locale) + " " +
                                    format::text(field.label, filter.locale) + " " + field.value + " " +
                                    label_of(field, field.value, filter.locale);
            if (!holds_words(all, filter.text)) continue;
        }
        (of_selection(field, filter.selection) ? first : others).push_back(field);
    }
    const bool only_selected = filter.selected_only && !filter.selection.empty();
    if (!only_selected) first.insert(first.end(), others.begin(), others.end());
    return first;
}

bool same_but_for_values(const std::vector<editing::Field>& one, const std::vector<editing::Field>& other) {
    return std::equal(one.begin(), one.end(), other.begin(), other.end(),
                      [](const editing::Field& left, const editing::Field& right) {
                          return left.path == right.path && left.group == right.group && left.label == right.label &&
                                 left.kind == right.kind && left.help == right.help &&
                                 same_choices(left.choices, right.choices);
                      });
}

std::string label_of(const editing::Field& field, const std::string& value, const format::Locale& locale) {
    const auto choice = std::find_if(field.choices.begin(), field.choices.end(),
                                     [&](const editing::Choice& one) { return one.value == value; });
    return choice == field.choices.end() || choice->label.empty() ? value : format::text(choice->label, locale);
}

std::string value_of(const editing::Field& field, const std::string& text, const format::Locale& locale) {
    const auto choice = std::find_if(field.choices.begin(), field.choices.end(), [&](const editing::Choice& one) {
        return format::text(one.label, locale) == text;
    });
    return choice == field.choices.end() ? text : choice->value;
}

}  // namespace toehold::window
