#include "job/questions.h"

#include "job/answers.h"
#include "job/post_order.h"
#include "units/quantity.h"
#include "units/scan.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace toehold::job {
namespace {

using catalog::Catalog;
using format::Phrase;
using format::phrase;
using format::verbatim;

bool always(const Job&) { return true; }

/// Reads an answer into a job; false where it is not one.
using Reader = std::function<bool(Job&, const std::string&)>;

Phrase accepted_of(const Question& question) {
    std::string words;
    for (const Choice& choice : question.choices) words += (words.empty() ? "" : ", ") + choice.answer;
    return question.open ? phrase("{} or the like", words) : verbatim(words);
}

/// Takes an answer that is read and of which the job then has no problem.
void take_by(Question& question, const Catalog& catalog, const Reader& read) {
    const Phrase accepted = accepted_of(question);
    question.take = [id = question.id, accepted, read, all = &catalog](Job& job,
                                                                       std::string_view text) -> std::optional<Phrase> {
        Job changed = job;
        if (!read(changed, std::string(units::trimmed(text)))) return accepted;
        for (const model::Problem& problem : problems(changed, *all))
            if (problem.element == id) return problem.accepted;
        job = std::move(changed);
        return std::nullopt;
    };
}

/// A value the job always has, picked from a list.
template <class Value>
void pick(Question& question, const Catalog& catalog, const std::vector<Answer<Value>>& answers, Value Job::*field) {
    question.choices = choices_of(answers);
    take_by(question, catalog, [&answers, field](Job& job, const std::string& text) {
        const Answer<Value>* const answer = find_answer(answers, text);
        if (answer != nullptr) job.*field = answer->value;
        return answer != nullptr;
    });
    question.answer = [&answers, field](const Job& job) { return word_of(answers, job.*field); };
}

/// A value that may be absent, picked from a list.
template <class Value>
void pick(Question& question, const Catalog& catalog, const std::vector<Answer<Value>>& answers,
          std::optional<Value> Job::*field) {
    question.choices = choices_of(answers);
    question.optional = true;
    take_by(question, catalog, [&answers, field](Job& job, const std::string& text) {
        const Answer<Value>* const answer = find_answer(answers, text);
        if (answer != nullptr) job.*field = answer->value;
        if (text.empty()) (job.*field).reset();
        return answer != nullptr || text.empty();
    });
    question.answer = [&answers, field](const Job& job) {
        return job.*field ? word_of(answers, *(job.*field)) : std::string();
    };
}

void measure(Question& question, const Catalog& catalog, double Job::*field) {
    question.open = true;
    take_by(question, catalog, [field](Job& job, const std::string& text) {
        const units::Parsed length = units::parse(text, units::Kind::length);
        if (length.value) job.*field = *length.value;
        return length.value.has_value();
    });
    question.answer = [field](const Job& job) { return units::exact(job.*field, units::Kind::length); };
}

void measure(Question& question, const Catalog& catalog, std::optional<double> Job::*field) {
    question.open = true;
    take_by(question, catalog, [field](Job& job, const std::string& text) {
        const units::Parsed length = units::parse(text, units::Kind::length);
        job.*field = length.value;
        return length.value || text.empty();
    });
    question.answer = [field](const Job& job) {
        return job.*field ? units::exact(*(job.*field), units::Kind::length) : std::string();
    };
}

void write(Question& question, const Catalog& catalog, std::string Job::*field) {
    take_by(question, catalog, [field](Job& job, const std::string& text) {
        job.*field = text;
        return true;
    });
    question.answer = [field](const Job& job) { return job.*field; };
}

void write(Question& question, const Catalog& catalog, std::optional<std::string> Job::*field) {
    question.optional = true;
    take_by(question, catalog, [field](Job& job, const std::string& text) {
        job.*field = text.empty() ? std::nullopt : std::optional<std::string>(text);
        return true;
    });
    question.answer = [field](const Job& job) { return (job.*field).value_or(""); };
}

Question started(std::string id, Phrase title, Phrase ask) {
    Question question;
    question.id = std::move(id);
    question.title = std::move(title);
    question.ask = std::move(ask);
    question.asked = always;
    return question;
}

Question height(const Catalog& catalog) {
    Question question = started("height", phrase("Guard height"),
                                phrase("How high is the top of the guard above the walking surface?"));
    question.choices = plain_choices({"36 in", "42 in"});
    measure(question, catalog, &Job::guard_height_in);
    return question;
}

Question occupancy(const Catalog& catalog) {
    Question question = started("occupancy", phrase("Occupancy"), phrase("What is the building?"));
    pick(question, catalog, occupancy_answers(), &Job::occupancy);
    return question;
}

Question post(const Catalog& catalog) {
    Question question = started("post", phrase("Post"), phrase("Which post?"));
    question.choices = post_choices();
    question.open = true;
    take_by(question, catalog, [](Job& job, const std::string& text) {
        const std::optional<PostOrder> order = read_post(text);
        if (order) job.post = *order;
        return order.has_value();
    });
    question.answer = [](const Job& job) { return text_of(job.post); };
    return question;
}

Question decking(const Catalog& catalog) {
    Question question = started("decking", phrase("Deck boards"), phrase("Which deck boards?"));
    question.choices = decking_choices(catalog);
    write(question, catalog, &Job::decking);
    return question;
}

Question joist_size(const Catalog& catalog) {
    Question question = started("joist-size", phrase("Joist size"), phrase("What size are the joists?"));
    question.choices = plain_choices({"2x8", "2x10", "2x12"});
    question.open = true;
    write(question, catalog, &Job::joist_size);
    return question;
}

Question joist_spacing(const Catalog& catalog) {
    Question question =
        started("joist-spacing", phrase("Joist spacing"), phrase("How far apart are the joists, center to center?"));
    question.choices = plain_choices({"12 in", "16 in", "24 in"});
    measure(question, catalog, &Job::joist_spacing_in);
    return question;
}

Question place(const Catalog& catalog) {
    Question question = started("place", phrase("Place of the post"), phrase("Where does the post stand?"));
    pick(question, catalog, place_answers(), &Job::place);
    return question;
}

Question tributary_length(const Catalog& catalog) {
    Question question = started("tributary-length", phrase("Length of rail"),
                                phrase("What length of rail does this post take (the spacing of the posts)?"));
    question.choices = plain_choices({"4 ft", "5 ft", "6 ft"});
    measure(question, catalog, &Job::tributary_length_in);
    question.asked = needs_tributary_length;
    return question;
}

/// An optional question of these words, of which the rest is filled in by the caller.
Question optional(std::string id, Phrase title, Phrase ask) {
    Question question = started(std::move(id), std::move(title), std::move(ask));
    question.optional = true;
    return question;
}

void add_optional_of_base(std::vector<Question>& all, const Catalog& catalog) {
    Question access = optional("access-below", phrase("Access below"),
                               phrase("Can nuts be turned below the deck? If not, lag screws are used."));
    pick(access, catalog, yes_no_answers(), &Job::access_below);
    all.push_back(std::move(access));
    Question code = optional("code", phrase("Building code"), phrase("Which edition of the code is in force?"));
    pick(code, catalog, code_answers(), &Job::code);
    all.push_back(std::move(code));
    Question handrail =
        optional("handrail", phrase("Handrail"), phrase("Does the top of the guard serve as a handrail?"));
    pick(handrail, catalog, yes_no_answers(), &Job::handrail);
    all.push_back(std::move(handrail));
    Question thickness = optional("decking-thickness", phrase("Board thickness"), phrase("How thick are the boards?"));
    thickness.choices = plain_choices({"5/4", "2x6", "0.95 in"});
    thickness.open = true;
    write(thickness, catalog, &Job::decking_thickness);
    all.push_back(std::move(thickness));
}

void add_optional_of_framing(std::vector<Question>& all, const Catalog& catalog) {
    Question species = optional("species", phrase("Species"), phrase("Of which wood are framing and wood post?"));
    species.choices = species_choices(catalog);
    write(species, catalog, &Job::species);
    all.push_back(std::move(species));
    Question grade = optional("grade", phrase("Grade"), phrase("Of which grade?"));
    grade.choices = grade_choices(catalog);
    write(grade, catalog, &Job::grade);
    all.push_back(std::move(grade));
    Question treated = optional("treated", phrase("Treated"), phrase("Is the framing preservative-treated?"));
    pick(treated, catalog, yes_no_answers(), &Job::treated);
    all.push_back(std::move(treated));
    Question span =
        optional("joist-span", phrase("Joist span"), phrase("How far do the joists span from ledger to beam?"));
    span.choices = plain_choices({"6 ft", "8 ft", "10 ft"});
    measure(span, catalog, &Job::joist_span_in);
    all.push_back(std::move(span));
}

}  // namespace

std::vector<Question> questions(const Catalog& catalog) {
    std::vector<Question> all = {height(catalog),  occupancy(catalog),       post(catalog),
                                 decking(catalog), joist_size(catalog),      joist_spacing(catalog),
                                 place(catalog),   tributary_length(catalog)};
    add_optional_of_base(all, catalog);
    add_optional_of_framing(all, catalog);
    return all;
}

Question question(std::string_view id, const Catalog& catalog) {
    std::vector<Question> all = questions(catalog);
    const auto found = std::find_if(all.begin(), all.end(), [id](const Question& one) { return one.id == id; });
    if (found == all.end()) throw std::out_of_range("there is no question " + std::string(id));
    return std::move(*found);
}

}  // namespace toehold::job
