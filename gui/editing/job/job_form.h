#pragma once
// The answers to a job's questions while they are given: what is asked, what was typed, what of it was refused, and the
// detail that the answers make. No toolkit.
#include "catalog/catalog.h"
#include "format/phrase.h"
#include "job/questions.h"

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace toehold::editing {

class JobForm {
  public:
    /// With the answers every job begins with. The catalog outlives the form.
    explicit JobForm(const catalog::Catalog& catalog);

    /// All of them, in the order they are asked; `asked` says which are now.
    [[nodiscard]] const std::vector<job::Question>& questions() const { return questions_; }
    [[nodiscard]] bool asked(const job::Question& question) const { return question.asked(job_); }
    /// As typed where it was refused, else as it stands in the job; empty: none.
    [[nodiscard]] std::string answer(const job::Question& question) const;
    /// What would be accepted instead of the answer given; empty: it was taken.
    [[nodiscard]] format::Phrase refusal(const job::Question& question) const;
    /// An answer that is refused is kept as it was typed, and then the answers make no detail.
    void take(const job::Question& question, const std::string& text);

    /// What the answers make; absent: `why_not` says why.
    [[nodiscard]] const std::optional<job::Started>& started() const { return started_; }
    /// A title and what is wanted there; both empty where the answers make a detail.
    [[nodiscard]] std::pair<format::Phrase, format::Phrase> why_not() const;
    /// What the same answers make with another one to this question; absent: nothing.
    [[nodiscard]] std::optional<job::Started> with(const job::Question& question, const std::string& text) const;

  private:
    struct Refused {
        std::string text;
        format::Phrase accepted;
    };
    void make();

    const catalog::Catalog& catalog_;
    std::vector<job::Question> questions_;
    job::Job job_;
    std::map<std::string, Refused> refused_;  ///< by question
    model::Problems problems_;
    std::optional<job::Started> started_;
};

/// Of each assumed value of a started detail, whether the detail as it stands has it still.
[[nodiscard]] std::vector<bool> still_assumed(const job::Started& started, const model::BaseDetail& now);
/// Where among `editing::fields` an assumed value stands, if it has a field of its own.
[[nodiscard]] std::string field_of(const job::Assumed& assumed);

}  // namespace toehold::editing
