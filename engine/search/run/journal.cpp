#include "search/run/journal.h"

#include "search/run/lines.h"

#include <sys/file.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string_view>

namespace toehold::search {
namespace {

namespace fs = std::filesystem;

using format::phrase;

[[noreturn]] void refuse(const std::string& file, int error) {
    throw JournalError(phrase("{}: the journal cannot be written: {}", file, std::strerror(error)));
}

void add_line(std::string_view text, const std::string& source, std::size_t number, const std::string& space,
              Judged& judged) {
    const std::optional<Line> line = read_line(text);
    if (!line) throw JournalError(phrase("{}:{}: not a line of a search's judgements", source, number));
    if (line->space != space) {
        throw JournalError(
            phrase("{}:{}: judged for another search (space {}, this one is {}): its detail, ranges, catalogs or "
                   "program differ",
                   source, number, line->space, space));
    }
    if (line->last < line->judgement.candidate || line->last >= judged.candidates())
        throw JournalError(
            phrase("{}:{}: no candidate {}; the last is {}", source, number, line->last, judged.candidates() - 1));
    for (Candidate candidate = line->judgement.candidate; candidate <= line->last; ++candidate) {
        Judgement judgement = line->judgement;
        judgement.candidate = candidate;
        judged.add(std::move(judgement));
    }
}

/// Whole lines alone: what a crash cut short is judged again.
void read(const std::string& file, const std::string& space, Judged& judged) {
    std::ifstream in(file, std::ios::binary);
    std::string text((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
    if (in.bad()) throw JournalError(phrase("{}: the journal cannot be read", file));
    const std::size_t end = text.rfind('\n');
    text.resize(end == std::string::npos ? 0 : end + 1);
    add_lines(text, file, space, judged);
    std::error_code failed;
    fs::resize_file(file, text.size(), failed);
    if (failed) refuse(file, failed.value());
}

}  // namespace

void add_lines(const std::string& text, const std::string& source, const std::string& space, Judged& judged) {
    std::size_t number = 0;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find('\n', begin), text.size());
        const std::string_view line = std::string_view(text).substr(begin, end - begin);
        ++number;
        if (line.find_first_not_of(" \t\r") != std::string_view::npos) add_line(line, source, number, space, judged);
        begin = end + 1;
    }
}

Journal::Journal(std::string file, std::string space, bool resume, Judged& judged)
    : file_(std::move(file)), space_(std::move(space)) {
    std::error_code ignored;
    const bool there = fs::exists(file_, ignored);
    if (there && !fs::is_regular_file(file_, ignored)) throw JournalError(phrase("{}: not a file", file_));
    if (there && !resume && fs::file_size(file_, ignored) > 0)
        throw JournalError(phrase("{}: the journal exists; go on with it by --resume, or name another file", file_));
    out_.reset(std::fopen(file_.c_str(), "ab"));
    if (!out_) refuse(file_, errno);
    // Two that add to one file would cut each other's lines. Where a file system has no locks nobody is kept out.
    if (::flock(::fileno(out_.get()), LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK)
        throw JournalError(
            phrase("{}: another search is writing this journal; wait for it, or name another file", file_));
    if (there) read(file_, space_, judged);
}

void Journal::add(const std::vector<Judgement>& judgements) {
    const std::string text = lines_of(judgements, space_);
    errno = 0;
    const bool written = std::fwrite(text.data(), 1, text.size(), out_.get()) == text.size();
    if (!written || std::fflush(out_.get()) != 0) refuse(file_, errno);
}

}  // namespace toehold::search
