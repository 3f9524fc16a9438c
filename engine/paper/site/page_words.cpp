#include "paper/site/page_words.h"

#include <algorithm>
#include <utility>

namespace toehold::paper::site {
namespace {

using drawing::Lettering;
using drawing::Pen;
using drawing::TextSize;

constexpr Lettering body{TextSize::normal};
constexpr Lettering strong{TextSize::normal, true};
constexpr Lettering heading_lettering{TextSize::large, true};

// In lettering mm, so that they shrink with it.
constexpr double indent_mm = 6.0, item_gap_mm = 1.0, list_gap_mm = 1.8, rule_mm = 1.2, mark_mm = 2.9;
constexpr double tight_spacing = 0.93;  ///< of the usual line spacing, within the lists

double list_line_mm(const PageWords& page) { return tight_spacing * page.line_mm(TextSize::normal); }

double item_height_mm(const PageWords& page, const SetList::Item& item) {
    return static_cast<double>(item.lead.size() + item.words.size()) * list_line_mm(page) + item_gap_mm * page.scale();
}

double heading_height_mm(const PageWords& page, const SetList& list) {
    return static_cast<double>(list.heading.size()) * page.line_mm(TextSize::large) + rule_mm * page.scale();
}

void add_mark(PageWords& page, const SetList& list, std::size_t index, double left_mm, double top_mm) {
    const double size_mm = mark_mm * page.scale();
    const double down_mm = top_mm + 0.5 * (list_line_mm(page) - size_mm);
    switch (list.mark) {
        case ItemMark::number:
            page.add_line(left_mm, top_mm, std::to_string(list.first_number + static_cast<int>(index)), strong);
            return;
        case ItemMark::box:
            page.add_frame(left_mm, down_mm, size_mm, size_mm, Pen::cut);
            return;
        case ItemMark::cross:
            page.add_cross(left_mm, down_mm, size_mm);
            return;
    }
}

SetList::Item more_line(const PageWords& page, double width_mm, const format::Locale& locale) {
    const std::string words = format::text(format::phrase("More in the report: not all of it fits here."), locale);
    return {page.broken(words, width_mm - indent_mm * page.scale(), strong), {}};
}

bool digit_at(const std::string& words, std::size_t index) {
    return index < words.size() && words[index] >= '0' && words[index] <= '9';
}

/// Blanks within a figure, and between it and its unit, at which no line may break.
std::string unbroken(const std::string& words) {
    static constexpr const char* blank = "\u00a0";
    std::string result;
    for (std::size_t index = 0; index < words.size(); ++index) {
        const bool inside = words[index] == ' ' && index > 0 && digit_at(words, index - 1);
        const std::string next = words.substr(std::min(words.size(), index + 1), 2);
        const bool fraction =
            digit_at(words, index + 1) && words.find('/', index) < std::min(words.find(' ', index + 1), words.size());
        const bool unit = next == "in" || next == "mm";
        if (inside && (unit || fraction)) {
            result += blank;
        } else {
            result += words[index];
        }
    }
    return result;
}

}  // namespace

std::string sentence(std::string words) {
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words;
}

double PageWords::add_line(double left_mm, double top_mm, const std::string& words, const Lettering& lettering) {
    constexpr double foot = 0.76;  // of the line, from its top
    const double line = line_mm(lettering.size);
    layout::add_words(scene_, spot(left_mm, top_mm + foot * line), words, {lettering.size, lettering.bold});
    return top_mm + line;
}

double PageWords::add_lines(double left_mm, double top_mm, const std::vector<std::string>& lines,
                            const Lettering& lettering) {
    for (const std::string& line : lines) top_mm = add_line(left_mm, top_mm, line, lettering);
    return top_mm;
}

void PageWords::add_rule(double left_mm, double right_mm, double at_mm, Pen pen) {
    layout::add_rule(scene_, spot(left_mm, at_mm), spot(right_mm, at_mm), pen);
}

void PageWords::add_frame(double left_mm, double top_mm, double width_mm, double height_mm, Pen pen) {
    layout::add_frame(scene_, {left_mm / scale_, top_mm / scale_, width_mm / scale_, height_mm / scale_}, pen);
}

void PageWords::add_cross(double left_mm, double top_mm, double size_mm) {
    const double right_mm = left_mm + size_mm, foot_mm = top_mm + size_mm;
    layout::add_rule(scene_, spot(left_mm, top_mm), spot(right_mm, foot_mm), Pen::cut);
    layout::add_rule(scene_, spot(left_mm, foot_mm), spot(right_mm, top_mm), Pen::cut);
}

SetList set_list(const PageWords& page, const format::Phrase& heading, ItemMark mark, const Instructions& instructions,
                 double width_mm, const format::Locale& locale) {
    const double words_mm = width_mm - indent_mm * page.scale();
    SetList list{page.broken(format::text(heading, locale), width_mm, heading_lettering), mark, 1, {}};
    for (const Instruction& one : instructions) {
        SetList::Item item;
        const std::string lead = format::text(one.lead, locale), words = format::text(one.words, locale);
        if (!lead.empty()) item.lead = page.broken(unbroken(lead), words_mm, strong);
        if (!words.empty())
            item.words = page.broken(unbroken(mark == ItemMark::cross ? words : sentence(words)), words_mm, body);
        list.items.push_back(std::move(item));
    }
    return list;
}

double height_mm(const PageWords& page, const SetList& list) {
    if (list.items.empty()) return 0.0;
    double height = heading_height_mm(page, list) + list_gap_mm * page.scale();
    for (const SetList::Item& item : list.items) height += item_height_mm(page, item);
    return height;
}

double add_list(PageWords& page, const SetList& list, double left_mm, double top_mm, double width_mm) {
    if (list.items.empty()) return top_mm;
    page.add_lines(left_mm, top_mm, list.heading, heading_lettering);
    top_mm += heading_height_mm(page, list);
    page.add_rule(left_mm, left_mm + width_mm, top_mm - 0.7 * rule_mm * page.scale(), Pen::cut);
    for (std::size_t index = 0; index < list.items.size(); ++index) {
        const SetList::Item& item = list.items[index];
        add_mark(page, list, index, left_mm, top_mm);
        const double words_mm = left_mm + indent_mm * page.scale();
        double line_top_mm = top_mm;
        for (const std::string& line : item.lead) {
            page.add_line(words_mm, line_top_mm, line, strong);
            line_top_mm += list_line_mm(page);
        }
        for (const std::string& line : item.words) {
            page.add_line(words_mm, line_top_mm, line, body);
            line_top_mm += list_line_mm(page);
        }
        top_mm += item_height_mm(page, item);
    }
    return top_mm + list_gap_mm * page.scale();
}

SetList shortened(const PageWords& page, SetList list, double height, double width_mm, const format::Locale& locale) {
    if (height_mm(page, list) <= height) return list;
    const SetList::Item more = more_line(page, width_mm, locale);
    while (!list.items.empty()) {
        list.items.back() = more;
        if (height_mm(page, list) <= height) return list;
        list.items.pop_back();
    }
    return list;
}

}  // namespace toehold::paper::site
