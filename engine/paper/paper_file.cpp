#include "paper/paper_file.h"

#include "drawing/drawings.h"
#include "paper/document.h"
#include "paper/issue.h"
#include "paper/page/site_page.h"
#include "paper/papers.h"
#include "paper/shop/side/bracket.h"
#include "review/review.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdlib>
#include <ctime>
#include <stdexcept>

namespace toehold::paper {
namespace {

drawing::Scene drawn(Kind kind, const drawing::Subject& subject) {
    if (kind == Kind::plan) return drawing::plan(subject, {});
    if (kind == Kind::section) return drawing::section(subject, drawing::section_plane(subject.detail, {}));
    return drawing::elevation(subject);
}

/// One drawing on a lying sheet, at a customary scale; beside a plan what it does not show from above.
Sheet single_drawing(Kind kind, const review::Review& review, const Issue& issue) {
    constexpr double margin_mm = 10.0;
    Sheet sheet;
    sheet.size = size_of(issue.paper, Turn::lying);
    const drawing::Subject subject{review.resolved.detail, &review.resolved, nullptr, issue.locale};
    Frame frame{margin_mm, margin_mm, sheet.size.width_mm - 2.0 * margin_mm, sheet.size.height_mm - 2.0 * margin_mm};
    drawing::Scene beside = kind == Kind::plan ? drawing::from_above(subject) : drawing::Scene{};
    if (!beside.items.empty()) {
        frame.width *= 0.5;
        Frame right = frame;
        right.left += frame.width;
        sheet.placed.push_back(placed_to_scale(std::move(beside), right));
    }
    sheet.placed.push_back(placed_to_scale(drawn(kind, subject), frame));
    return sheet;
}

}  // namespace

std::string sheet_file(const Sheet& sheet, std::string_view ending, const std::string& title, const Issue& issue) {
    if (ending == "svg") return svg(sheet);
    if (ending == "png") return png(sheet);
    return pdf({{title, "", issue.program, issue.date}, {sheet}, {}});
}

std::vector<std::string> endings(Kind kind) {
    switch (kind) {
        case Kind::report:
        case Kind::letter:
            return {"pdf"};
        case Kind::shop_drawing:
            return {"pdf", "svg", "png", "dxf"};
        case Kind::site_sheet:
            return {"pdf", "svg", "png", "html"};
        case Kind::plan:
        case Kind::section:
        case Kind::elevation:
            return {"svg", "pdf", "png"};
    }
    return {};
}

format::Phrase why_not(Kind kind, const model::BaseDetail& detail) {
    if (kind != Kind::shop_drawing || shop::has_made_plate(detail)) return {};
    return format::phrase(
        "this post is fastened to the side of a member without a bracket plate: there is nothing to cut in metal; the "
        "site sheet has the holes");
}

std::string paper_file(Kind kind, std::string_view ending, const review::Review& review, const Issue& issue) {
    const std::vector<std::string> known = endings(kind);
    if (std::find(known.begin(), known.end(), ending) == known.end())
        throw std::invalid_argument("no paper of this kind ends in ." + std::string(ending));
    const std::string& name = review.resolved.detail.name;
    switch (kind) {
        case Kind::report:
            return pdf(lay_out(calculation_report(review, issue)));
        case Kind::letter:
            return pdf(lay_out(comment_letter(review, issue)));
        case Kind::shop_drawing:
            if (ending == "dxf") return cutting_file(shop::made_plate(review.resolved).plate, issue.locale);
            return sheet_file(shop_drawing(review.resolved, review.input_sha256, issue), ending,
                              format::text(format::phrase("{}: shop drawing", name), issue.locale), issue);
        case Kind::site_sheet:
            if (ending == "html") return site_page(site_subject(review, issue), issue);
            return sheet_file(site_sheet(review, issue), ending,
                              format::text(format::phrase("{}: site sheet", name), issue.locale), issue);
        case Kind::plan:
        case Kind::section:
        case Kind::elevation:
            break;
    }
    return sheet_file(single_drawing(kind, review, issue), ending, name, issue);
}

std::string customary_name(Kind kind, std::string_view detail_file) {
    constexpr std::array<std::string_view, 7> what = {"report", "plate",   "site",     "comments",
                                                      "plan",   "section", "elevation"};
    const std::string_view stem = detail_file.substr(0, detail_file.rfind(".xml"));
    return std::string(stem) + "-" + std::string(what.at(static_cast<std::size_t>(kind))) + "." + endings(kind).front();
}

std::string today() {
    std::time_t now = std::time(nullptr);
    std::tm day{};
    const char* fixed = std::getenv("SOURCE_DATE_EPOCH");
    const std::string_view digits = fixed == nullptr ? std::string_view() : std::string_view(fixed);
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), now);
    const bool is_fixed = !digits.empty() && read.ec == std::errc() && read.ptr == digits.data() + digits.size();
    if (is_fixed) {
        gmtime_r(&now, &day);
    } else {
        localtime_r(&now, &day);
    }
    std::array<char, 16> text{};
    return {text.data(), std::strftime(text.data(), text.size(), "%Y-%m-%d", &day)};
}

}  // namespace toehold::paper
