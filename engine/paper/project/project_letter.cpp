// What must be answered, one comment a first cause over all posts, then the reviewer's own remarks.
#include "format/figures.h"
#include "paper/letter/remark_blocks.h"
#include "paper/letter/remark_target.h"
#include "paper/project/project_sections.h"
#include "paper/report/results.h"
#include "review/schedule/posts_by_cause.h"
#include "wording/line.h"
#include "wording/marks.h"
#include "wording/project.h"
#include "wording/status.h"

#include <algorithm>

namespace toehold::paper {
namespace project {
namespace {

using drawing::Across;
using format::Phrase;
using format::phrase;
using model::Remark;
using report::words_cell;

class Letter {
  public:
    explicit Letter(const ProjectSource& source) : source_(source), review_(source.subject.review) {
        for (const review::LineReview& line : review_.lines) rails_.push_back(review_of_rail(source.subject, line));
    }

    Blocks blocks() && {
        add_head();
        add_causes();
        add_remarks(Remark::State::open, Heading{1, text(phrase("Comments of the reviewer")), "open"});
        add_remarks(Remark::State::settled, Heading{1, text(phrase("Settled comments")), "settled"});
        return std::move(blocks_);
    }

  private:
    [[nodiscard]] std::string text(const Phrase& words) const { return source_.text(words); }

    void add_head() {
        Facts facts;
        const auto add = [&](const Phrase& label, std::string words) {
            facts.facts.push_back({text(label), std::move(words)});
        };
        add(phrase("PROJECT"), source_.issue.project.empty() ? review_.project : source_.issue.project);
        add(phrase("POSTS"), text(wording::role_counts(review_.roles)));
        add(phrase("FILE"), source_.issue.file);
        facts.facts.push_back(letter::reviewers(review_.remarks, source_.locale()));
        add(phrase("DATE"), source_.issue.date);
        add(phrase("PROGRAM"), source_.issue.program);
        add(phrase("SHA-256 OF THE FILE"), review_.input_sha256);
        blocks_.emplace_back(report::title(text(phrase("Comments on a guard")), drawing::TextSize::title));
        blocks_.emplace_back(std::move(facts));
        Verdict verdict{text(wording::word(review_.verdict)),
                        {text(wording::verdict_counts(review_))},
                        report::frame_of(review_.verdict)};
        if (const Phrase reason = wording::line_reason(review_); !reason.empty())
            verdict.sentences.push_back(text(reason));
        blocks_.emplace_back(std::move(verdict));
    }

    void add_causes() {
        blocks_.emplace_back(Heading{1, text(phrase("What is not adequate, by first cause")), "causes"});
        for (const review::PostsOfCause& cause : review::posts_by_cause(review_)) add_posts(cause);
        for (std::size_t line = 0; line < rails_.size(); ++line) {
            if (review_.lines[line].verdict != review::Verdict::adequate) add_rail(review_.lines[line], rails_[line]);
        }
        if (number_ == 0)
            blocks_.emplace_back(report::paragraph(text(phrase("Nothing: all posts and rails are adequate."))));
    }

    void add_comment(const Phrase& title) {
        const std::string mark = "C" + std::to_string(++number_);
        blocks_.emplace_back(Heading{2, mark + "  " + text(title), "comment-" + std::to_string(number_)});
    }

    /// One row a post: what its first cause comes to there.
    [[nodiscard]] Table posts_table(const review::PostsOfCause& cause) const {
        Table table;
        table.columns = {{text(phrase("post")), 0.16},
                         {text(phrase("mount")), 0.26},
                         {text(phrase("part")), 0.34},
                         {text(phrase("D/C")), 0.08, Across::right},
                         {text(phrase("verdict")), 0.16}};
        for (const std::size_t index : cause.posts) {
            const review::PostReview& one = review_.posts[index];
            const review::Cause own = review::cause_of(one.review);
            table.rows.push_back({{one.post.id, true},
                                  words_cell(one.post.mount),
                                  words_cell(own.id.empty() ? "" : text(model::part_name(own.part))),
                                  words_cell(own.ratio ? format::ratio_text(*own.ratio) : "-"),
                                  report::verdict_cell(one.review.verdict, source_.locale())});
        }
        return table;
    }

    void add_posts(const review::PostsOfCause& cause) {
        const Phrase title = cause.cause.title.empty() ? phrase("No check could be made") : cause.cause.title;
        add_comment(cause.posts.size() == 1
                        ? phrase("{}: post {}", title, wording::marks(cause.marks))
                        : phrase("{}: {} posts, {}", title, cause.posts.size(), wording::marks(cause.marks)));
        blocks_.emplace_back(posts_table(cause));
        blocks_.emplace_back(report::paragraph(text(wording::worst_reason(review_, cause.worst, cause.posts.size()))));
        blocks_.emplace_back(letter::room_for_answer(source_.locale()));
    }

    void add_rail(const review::LineReview& line, const review::Review& rail) {
        add_comment(line.cause ? phrase("{}: guard line {}", line.cause->title, line.id)
                               : phrase("Guard line {}", line.id));
        blocks_.emplace_back(report::paragraph(text(wording::line_reason(line))));
        Table table;
        table.columns =
            report::with_measure({{text(phrase("check")), 0.3}, {text(phrase("worst part")), 0.26}}, source_.locale());
        for (const report::CheckResults& check : report::results_by_check(rail)) {
            if (check.worst().status == checks::Status::holds) continue;
            table.rows.push_back(report::with_measure(
                {words_cell(text(check.worst().title)), words_cell(text(model::part_name(check.worst().part)))},
                report::measure(check.worst()), source_.locale()));
        }
        if (!table.rows.empty()) blocks_.emplace_back(std::move(table));
        blocks_.emplace_back(letter::room_for_answer(source_.locale()));
    }

    void add_remarks(Remark::State state, Heading heading) {
        const std::vector<Remark> remarks = letter::in_state(review_.remarks, state);
        if (remarks.empty()) return;
        blocks_.emplace_back(std::move(heading));
        for (const Remark& remark : remarks) {
            letter::add_remark(blocks_, {spoken_of(remark), source_.issue}, remark, ++number_);
            if (state == Remark::State::open) blocks_.emplace_back(letter::room_for_answer(source_.locale()));
        }
    }

    /// The first post, or rail, whose review has a result or a finding of what the remark is about; else the first
    /// post.
    [[nodiscard]] const review::Review& spoken_of(const Remark& remark) const {
        const auto speaks = [&remark](const review::Review& one) {
            return letter::target_of(remark, one).gone.empty();
        };
        const auto post = std::find_if(review_.posts.begin(), review_.posts.end(),
                                       [&speaks](const auto& one) { return speaks(one.review); });
        if (post != review_.posts.end()) return post->review;
        const auto rail = std::find_if(rails_.begin(), rails_.end(), speaks);
        return rail != rails_.end() ? *rail : review_.posts.front().review;
    }

    const ProjectSource& source_;
    const review::ProjectReview& review_;
    std::vector<review::Review> rails_;  ///< in the order of the lines
    Blocks blocks_;
    std::size_t number_ = 0;
};

}  // namespace
}  // namespace project

Document project_letter(const ProjectSubject& subject, const Issue& issue) {
    Document document = report::titled(issue, format::phrase("Comments on a guard"), subject.review.project);
    const project::ProjectSource source{subject, issue};
    document.blocks = project::Letter(source).blocks();
    return document;
}

}  // namespace toehold::paper
