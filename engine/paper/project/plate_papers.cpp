#include "paper/project/plate_papers.h"

#include "paper/paper_file.h"
#include "paper/papers.h"
#include "paper/shop/anchor_schedule.h"
#include "paper/shop/side/bracket.h"
#include "paper/weight.h"
#include "wording/marks.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace toehold::paper {
namespace {

using format::phrase;
using review::ResolvedPost;

/// Posts that one paper serves.
struct Order {
    const ResolvedPost* first = nullptr;
    std::vector<std::string> marks;
    std::vector<std::vector<std::string>> anchors = {};  ///< rows of the first's schedule, once asked for
};

template <class Same>
std::vector<Order> orders(const std::vector<ResolvedPost>& posts, const Same& same) {
    std::vector<Order> all;
    for (const ResolvedPost& post : posts) {
        if (!shop::has_made_plate(post.resolved.detail)) continue;
        auto order = std::find_if(all.begin(), all.end(), [&](Order& one) { return same(one, post); });
        if (order == all.end()) order = all.insert(all.end(), Order{&post, {}, {}});
        order->marks.push_back(post.post.id);
    }
    return all;
}

/// The same to whoever makes it: bores and grips follow from the framing, so that one mount may give two drawings.
bool same_base(Order& order, const ResolvedPost& other) {
    const model::BaseDetail &detail = order.first->resolved.detail, &also = other.resolved.detail;
    if (!(detail.post == also.post && detail.mount == also.mount)) return false;
    if (order.anchors.empty()) order.anchors = shop::anchor_schedule(order.first->resolved, {}).rows;
    return order.anchors == shop::anchor_schedule(other.resolved, {}).rows;
}

bool same_plate(const Order& order, const ResolvedPost& other) {
    return shop::made_plate(order.first->resolved).plate == shop::made_plate(other.resolved).plate;
}

Issue issue_of(const Order& order, Issue issue) {
    issue.marks = format::text(wording::marks(order.marks), issue.locale);
    issue.quantity = order.marks.size();
    return issue;
}

std::vector<std::string> order_lines(const Order& order, const Issue& issue) {
    const std::string weight = weight_words(plate_weight_lb(order.first->resolved), issue.locale.system);
    std::vector<std::string> lines{
        format::text(phrase("MARK {}, QUANTITY {}, {} EACH", issue.marks, issue.quantity, weight), issue.locale)};
    if (!issue.revision.empty()) lines.push_back(format::text(phrase("REVISION {}", issue.revision), issue.locale));
    return lines;
}

std::string drawing_bytes(std::string_view ending, const Order& order, const std::string& input_sha256,
                          const Issue& issue) {
    catalog::Resolved resolved = order.first->resolved;
    resolved.detail.name = order.first->post.mount;  // of all its posts, not of the first
    const Sheet sheet = shop_drawing(resolved, input_sha256, issue);
    const std::string title =
        format::text(phrase("{}: shop drawing, {}", order.first->resolved.detail.project, issue.marks), issue.locale);
    return sheet_file(sheet, ending, title, issue);
}

}  // namespace

std::string fit_for_file_name(const std::string& words) {
    std::string fit = words;
    for (char& letter : fit) {
        const bool plain = (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') ||
                           (letter >= '0' && letter <= '9') || letter == '.' || letter == '-' || letter == '_';
        if (!plain) letter = '-';
    }
    return fit;
}

std::vector<PlatePaper> plate_papers(std::string_view ending, const std::vector<ResolvedPost>& posts,
                                     const std::string& input_sha256, const Issue& issue) {
    const bool cutting = ending == "dxf";
    if (!cutting && ending != "pdf" && ending != "svg" && ending != "png")
        throw std::invalid_argument("no shop paper ends in ." + std::string(ending));
    std::vector<PlatePaper> papers;
    for (const Order& order : cutting ? orders(posts, same_plate) : orders(posts, same_base)) {
        const model::Plate plate = shop::made_plate(order.first->resolved).plate;
        const Issue own = issue_of(order, issue);
        const std::string& id = cutting && !plate.id.empty() ? plate.id : order.first->post.mount;
        std::string name = unlike(fit_for_file_name(id), papers);
        papers.push_back({std::move(name), order.marks,
                          cutting ? cutting_file(plate, own.locale, order_lines(order, own))
                                  : drawing_bytes(ending, order, input_sha256, own)});
    }
    return papers;
}

}  // namespace toehold::paper
