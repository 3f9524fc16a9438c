#pragma once
// Words for the answers that are picked from a list, and reading the others.
#include "job/questions.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::job {

/// A word of an answer, what it stands for, and its name for people.
template <class Value>
struct Answer {
    std::string word;
    Value value;
    format::Phrase words;
};

[[nodiscard]] const std::vector<Answer<model::Occupancy>>& occupancy_answers();
[[nodiscard]] const std::vector<Answer<Place>>& place_answers();
[[nodiscard]] const std::vector<Answer<model::BuildingCode>>& code_answers();
[[nodiscard]] const std::vector<Answer<bool>>& yes_no_answers();

/// The answer of this word; nullptr where there is none.
template <class Value>
[[nodiscard]] const Answer<Value>* find_answer(const std::vector<Answer<Value>>& answers, std::string_view word) {
    for (const Answer<Value>& answer : answers)
        if (answer.word == word) return &answer;
    return nullptr;
}

/// The word that stands for the value; empty where there is none.
template <class Value>
[[nodiscard]] std::string word_of(const std::vector<Answer<Value>>& answers, const Value& value) {
    for (const Answer<Value>& answer : answers)
        if (answer.value == value) return answer.word;
    return {};
}

template <class Value>
[[nodiscard]] std::vector<Choice> choices_of(const std::vector<Answer<Value>>& answers) {
    std::vector<Choice> choices;
    choices.reserve(answers.size());
    for (const Answer<Value>& answer : answers) choices.push_back({answer.word, answer.words});
    return choices;
}

/// Posts, boards and sizes in common use.
[[nodiscard]] std::vector<Choice> post_choices();
[[nodiscard]] std::vector<Choice> decking_choices(const catalog::Catalog& catalog);
[[nodiscard]] std::vector<Choice> species_choices(const catalog::Catalog& catalog);
[[nodiscard]] std::vector<Choice> grade_choices(const catalog::Catalog& catalog);
/// Answers that are their own words.
[[nodiscard]] std::vector<Choice> plain_choices(const std::vector<std::string>& answers);

}  // namespace toehold::job
