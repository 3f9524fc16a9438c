#include "solving/studies.h"

#include <exception>
#include <utility>

namespace toehold::solving {
namespace {

/// The field with its values, or the sentence of the refusal in the news.
const study::Asked* read(const study::ValuesRead& read, StudyNews& news) {
    if (read.asked) return &*read.asked;
    news.failure = read.refusal;
    return nullptr;
}

std::shared_ptr<const study::AnyStudy> found(const study::Subject& subject, const study::Run& run, StudyNews& news) {
    if (news.asked.kind == StudyAsked::Kind::tornado)
        return std::make_shared<const study::AnyStudy>(study::tornado(subject, run));
    const std::vector<study::Field> fields = study::fields(subject);
    const study::ValuesRead across_read = study::read_values(fields, news.asked.across);
    const study::Asked* across = read(across_read, news);
    if (across == nullptr) return nullptr;
    if (news.asked.kind == StudyAsked::Kind::ratios)
        return std::make_shared<const study::AnyStudy>(study::sweep(subject, across->field, across->values, run));
    const study::ValuesRead up_read = study::read_values(fields, news.asked.up);
    const study::Asked* up = read(up_read, news);
    if (up == nullptr) return nullptr;
    return std::make_shared<const study::AnyStudy>(study::holding_map(subject, *across, *up, run));
}

}  // namespace

Studies::Studies(const catalog::Catalog& catalog, std::function<void(StudyNews)> deliver)
    : catalog_(catalog), deliver_(std::move(deliver)) {}

std::uint64_t Studies::begin(catalog::Resolved resolved, StudyAsked asked) {
    StudyNews news;
    news.number = ++last_;
    news.asked = std::move(asked);
    news.resolved = std::make_shared<const catalog::Resolved>(std::move(resolved));
    errand_.begin([this, news](const Errand::Stop& stop) {
        StudyNews told = news;
        study::Run run;
        run.stop = stop;
        run.progress = [&](std::size_t done, std::size_t all) {
            StudyNews far = news;
            far.done = done;
            far.all = all;
            if (!stop()) deliver_(std::move(far));
        };
        try {
            told.study = found({*told.resolved, catalog_}, run, told);
        } catch (const std::exception& fault) {
            told.failure = format::verbatim(fault.what());
        }
        if (!stop()) deliver_(std::move(told));
    });
    return news.number;
}

}  // namespace toehold::solving
