#include "paper/site/site_sample.h"
#include "paper/issue.h"

#include "drawing/render/lettering.h"
#include "drawing/render/palette.h"
#include "paper/read_back.h"
#include "review/review.h"

#include <map>

namespace toehold::test {
namespace {

/// Where a place of a scene stands on the sheet.
drawing::Point on_sheet(const paper::Placed& placed, const drawing::Place& place) {
    const double mm_per_in = 25.4 * placed.scale;
    return {placed.at_mm.x + mm_per_in * (place.at.x - placed.center_in.x) + placed.lettering * place.paper_mm.x,
            placed.at_mm.y - mm_per_in * (place.at.y - placed.center_in.y) - placed.lettering * place.paper_mm.y};
}

SheetWords words_of(const paper::Placed& placed, const drawing::Text& text) {
    // Capitals and what hangs below the line, of the font's height: OS/2 and hhea tables of the font.
    constexpr double capitals = 0.729, hanging = 0.236;
    const double size = placed.lettering * drawing::text_height_mm(text.size);
    const double wide = placed.lettering * drawing::text_width_mm(text.words, {text.size, text.bold, text.math});
    const drawing::Point at = on_sheet(placed, text.at);
    const double across = text.across == drawing::Across::left     ? 0.0
                          : text.across == drawing::Across::middle ? 0.5
                                                                   : 1.0;
    const double above = text.upright == drawing::Upright::bottom   ? 1.0
                         : text.upright == drawing::Upright::middle ? 0.5
                                                                    : 0.0;
    SheetWords words{text.words, size};
    if (text.angle_deg == 90.0) {
        words.left = at.x - above * capitals * size;
        words.right = words.left + (capitals + hanging) * size;
        words.top = at.y - (1.0 - across) * wide;
        words.bottom = words.top + wide;
        return words;
    }
    words.left = at.x - across * wide;
    words.right = words.left + wide;
    words.top = at.y - above * capitals * size;
    words.bottom = words.top + (capitals + hanging) * size;
    return words;
}

bool off(const paper::Size& size, double x, double y) {
    constexpr double reach_mm = 6.0;
    return x < reach_mm || y < reach_mm || x > size.width_mm - reach_mm || y > size.height_mm - reach_mm;
}

void replace_all(std::string& text, const std::string& what, const std::string& by) {
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size()))
        text.replace(at, what.size(), by);
}

std::string with_single_blanks(const std::string& text) {
    std::string result;
    for (const char one : text) {
        const bool blank = one == ' ' || one == '\n' || one == '\f';
        if (!blank) result += one;
        if (blank && !result.empty() && result.back() != ' ') result += ' ';
    }
    return result;
}

}  // namespace

review::Review reviewed(const model::BaseDetail& detail) {
    return review::evaluate(resolved_by_shipped(detail), "0123456789abcdef");
}

const review::Review& reviewed_demo(const std::string& demo) {
    static std::map<std::string, review::Review> known;
    const auto found = known.find(demo);
    return found != known.end() ? found->second : known.emplace(demo, reviewed(demo_detail(demo))).first->second;
}

paper::Issue issue_in(units::System system) {
    const bool us = system == units::System::us;
    return {"",           "2026-11-25",
            "sample.xml", "Toehold 0.5.0",
            {system},     us ? paper::PaperSize::letter : paper::PaperSize::a4};
}

std::vector<SheetWords> words_on(const paper::Sheet& sheet) {
    std::vector<SheetWords> all;
    for (const paper::Placed& placed : sheet.placed) {
        for (const drawing::Item& item : placed.scene.items) {
            const auto* const text = std::get_if<drawing::Text>(&item);
            if (text == nullptr) continue;
            if (text->angle_deg != 0.0 && text->angle_deg != 90.0)
                throw std::runtime_error("words aslant: " + text->words);
            all.push_back(words_of(placed, *text));
        }
    }
    return all;
}

std::vector<std::string> overlaps(const std::vector<SheetWords>& words) {
    std::vector<std::string> found;
    for (std::size_t i = 0; i < words.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            const SheetWords &one = words[i], &other = words[j];
            if (one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom)
                found.push_back(one.words + " over " + other.words);
        }
    }
    return found;
}

std::vector<std::string> off_the_page(const paper::Sheet& sheet) {
    std::vector<std::string> found;
    for (const SheetWords& one : words_on(sheet)) {
        if (off(sheet.size, one.left, one.top) || off(sheet.size, one.right, one.bottom)) found.push_back(one.words);
    }
    for (const paper::Placed& placed : sheet.placed) {
        for (const drawing::Item& item : placed.scene.items) {
            const auto* const path = std::get_if<drawing::Path>(&item);
            if (path == nullptr) continue;
            for (const auto& contour : path->contours) {
                for (const drawing::Place& place : contour) {
                    const drawing::Point at = on_sheet(placed, place);
                    if (off(sheet.size, at.x, at.y)) found.push_back("line of " + model::key(path->part));
                }
            }
        }
    }
    return found;
}

std::string read_site_sheet(const review::Review& review, units::System system) {
    const paper::Sheet sheet = paper::site_sheet(review, issue_in(system));
    std::vector<paper::Sheet> sheets = {sheet};
    std::string text =
        read_by("pdftotext -raw FILE -", paper::pdf({{"Site sheet", "", "", ""}, std::move(sheets), {}}), "pdf");
    replace_all(text, "\u00a0", " ");
    return with_single_blanks(text);
}

}  // namespace toehold::test
