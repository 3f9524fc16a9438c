#include "editing/document.h"

#include "editing/edits.h"
#include "editing/job/job_form.h"
#include "editing/mounts/mount.h"
#include "job/file.h"
#include "model/validate.h"
#include "xml/detail/detail_file.h"
#include "xml/detail/plates_file.h"
#include "xml/document/file.h"

#include <stdexcept>

namespace toehold::editing {
namespace {

Opened open_plates(const std::filesystem::path& file, const catalog::Catalog& catalog) {
    xml::PlatesRead read = xml::read_plates(file);
    if (!read.problems.empty()) return {std::nullopt, std::move(read.problems), {}};
    if (read.plates.empty())
        return {std::nullopt, {xml::file_problem(file, format::phrase("the file holds no plate"))}, {}};
    return {starting_detail(read.plates.front(), catalog), {}, {}, true};
}

/// The detail with those assumed values of its beginning that it has still.
job::Started with_assumed_left(const job::Started& started, const model::BaseDetail& now) {
    const std::vector<bool> still = still_assumed(started, now);
    job::Started left{now, {}};
    for (std::size_t at = 0; at < still.size(); ++at) {
        if (still[at]) left.assumed.push_back(started.assumed[at]);
    }
    return left;
}

}  // namespace

Opened open_detail(const std::filesystem::path& file, const catalog::Catalog& catalog) {
    if (xml::document_kind(file) == xml::DocumentKind::plates) return open_plates(file, catalog);
    xml::DetailRead read = xml::read_detail(file, xml::Mode::lenient);
    // Saving a detail of which something could not be read would lose that; and one of thousands of members would hold
    // the window up before anybody could mend it.
    if (!read.is_whole || (read.detail && model::too_many_members(read.detail->framing))) read.detail.reset();
    return {std::move(read.detail), std::move(read.problems), {read.sha256}};
}

model::BaseDetail as_saved(const std::filesystem::path& file, const model::BaseDetail& detail) {
    model::BaseDetail saved = detail;
    drop_stale_references(saved, file);
    return saved;
}

Saved save_detail(const std::filesystem::path& file, const model::BaseDetail& detail, const job::Started* started) {
    std::string text;
    try {
        const model::BaseDetail saved = as_saved(file, detail);
        text = started == nullptr ? xml::write_detail(saved) : job::as_file(with_assumed_left(*started, saved));
    } catch (const std::invalid_argument& error) {
        return {std::nullopt, model::sentence(xml::file_problem(file, format::verbatim(error.what())))};
    }
    if (const std::optional<model::Problem> problem = xml::save_atomically(file, text)) {
        return {std::nullopt, model::sentence(*problem)};
    }
    return {FileStamp{xml::sha256(text)}, {}};
}

FileStamp stamp_of(const std::filesystem::path& file) {
    const xml::TextRead bytes = xml::read_text(file);
    return {bytes.text ? xml::sha256(*bytes.text) : std::string()};
}

bool changed_outside(const std::filesystem::path& file, const FileStamp& stamp) {
    const xml::TextRead bytes = xml::read_text(file);
    if (bytes.text) return xml::sha256(*bytes.text) != stamp.sha256;
    std::error_code ignored;
    const bool there = std::filesystem::exists(std::filesystem::symlink_status(file, ignored));
    return there || !stamp.sha256.empty();
}

}  // namespace toehold::editing
