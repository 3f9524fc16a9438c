#include "paper/report/report_sample.h"
#include "paper/issue.h"

#include "review/shipped_reviews.h"
#include "search/remedies/remedies.h"
#include "xml/detail/detail_file.h"

#include <algorithm>
#include <map>

namespace toehold::test {
namespace {

const std::string prefix = "heron-landing-";

std::string lines(const paper::Table& table) {
    std::string words;
    for (const paper::Column& column : table.columns) words += column.title + "\n";
    for (const auto& row : table.rows) {
        for (const paper::Cell& cell : row) words += cell.words + "\n";
    }
    return words;
}

std::string lines(const paper::Block& block) {
    std::string words;
    if (const auto* heading = std::get_if<paper::Heading>(&block)) words = heading->words + "\n";
    if (const auto* paragraph = std::get_if<paper::Paragraph>(&block)) words = paragraph->words + "\n";
    if (const auto* table = std::get_if<paper::Table>(&block)) words = lines(*table);
    if (const auto* facts = std::get_if<paper::Facts>(&block)) {
        for (const paper::Facts::Fact& fact : facts->facts) words += fact.label + "\n" + fact.words + "\n";
    }
    if (const auto* verdict = std::get_if<paper::Verdict>(&block)) {
        words = verdict->word + "\n";
        for (const std::string& sentence : verdict->sentences) words += sentence + "\n";
    }
    return words;
}

}  // namespace

const review::Review& reported(const std::string& name) {
    static std::map<std::string, review::Review> known;
    const auto found = known.find(name);
    if (found != known.end()) return found->second;
    const xml::DetailRead read = xml::read_detail(std::string(TOEHOLD_DATA_FOLDER) + "/demo/" + prefix + name + ".xml");
    return known.emplace(name, review::review(shipped_detail(prefix + name), read.sha256)).first->second;
}

const review::Review& reported_with_remedies() {
    static const review::Review full = [] {
        review::Review review = reported("end-nailed-blocks");
        review.remedies = search::find_remedies(review, shipped_catalog());
        return review;
    }();
    return full;
}

paper::Issue report_issue(const std::string& name) {
    paper::Issue issue;
    issue.date = "2026-11-25";
    issue.file = prefix + name + ".xml";
    issue.program = "Toehold 0.5.0";
    return issue;
}

std::vector<std::string> reported_names() {
    std::vector<std::string> names = demo_names();
    for (std::string& name : names) name = name.substr(prefix.size());
    return names;
}

std::string words_of(const paper::Document& document) {
    std::string words;
    for (const paper::Block& block : document.blocks) words += lines(block);
    return words;
}

std::vector<paper::Heading> headings_of(const paper::Document& document) {
    std::vector<paper::Heading> headings;
    for (const paper::Block& block : document.blocks) {
        if (const auto* heading = std::get_if<paper::Heading>(&block)) headings.push_back(*heading);
    }
    return headings;
}

std::string words_under(const paper::Document& document, const std::string& heading_name) {
    std::string words;
    bool under = false;
    for (const paper::Block& block : document.blocks) {
        const auto* heading = std::get_if<paper::Heading>(&block);
        if (heading != nullptr) under = heading->name == heading_name;
        if (under) words += lines(block);
    }
    return words;
}

}  // namespace toehold::test
