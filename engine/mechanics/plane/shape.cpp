#include "mechanics/plane/shape.h"

#include "mechanics/plane/symmetric_part.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>
#include <utility>

namespace toehold::mechanics {
namespace {

constexpr double full_turn = 2.0 * std::numbers::pi;

/// Corners that coincide have no side between them, and no direction.
Polygon without_repeats(Polygon outline) {
    outline.erase(std::unique(outline.begin(), outline.end()), outline.end());
    while (outline.size() > 1 && outline.front() == outline.back()) outline.pop_back();
    return outline;
}

Point middle_of(const Polygon& outline) {
    if (outline.empty()) return {};
    Point low = outline.front(), high = low;
    for (const Point corner : outline) {
        low = {std::min(low.x, corner.x), std::min(low.y, corner.y)};
        high = {std::max(high.x, corner.x), std::max(high.y, corner.y)};
    }
    return {0.5 * (low.x + high.x), 0.5 * (low.y + high.y)};
}

/// Of the side after each corner, each at or past the one before; rounding of a straight corner is smoothed out.
std::vector<double> directions(const Polygon& outline) {
    std::vector<double> all;
    all.reserve(outline.size());
    for (std::size_t at = 0; at < outline.size(); ++at) {
        const Point from = outline[at], to = outline[(at + 1) % outline.size()];
        double way = std::atan2(to.y - from.y, to.x - from.x);
        if (!all.empty()) {
            while (way < all.back() - 0.5 * std::numbers::pi) way += full_turn;
            way = std::max(way, all.back());
        }
        all.push_back(way);
    }
    return all;
}

}  // namespace

Shape::Shape(Polygon outline) : outline_(without_repeats(std::move(outline))), reference_(middle_of(outline_)) {
    const std::size_t corners = outline_.size();
    up_to_.reserve(corners);
    for (std::size_t at = 0; at < corners; ++at) {
        up_to_.push_back(whole_);
        whole_ += side_moments(outline_[at], outline_[(at + 1) % corners], reference_);
    }
    if (!is_convex(outline_)) return;
    turns_rad_ = directions(outline_);
    // Once round and no more, or the corners cross each other.
    if (turns_rad_.back() - turns_rad_.front() > full_turn + 1e-9) turns_rad_.clear();
}

std::size_t Shape::farthest(double way_rad) const {
    // There the sides turn from going that way to going back: square to it.
    double square = way_rad + 0.5 * std::numbers::pi;
    square -= full_turn * std::floor((square - turns_rad_.front()) / full_turn);
    const auto after = std::upper_bound(turns_rad_.begin(), turns_rad_.end(), square);
    return static_cast<std::size_t>(after - turns_rad_.begin()) % outline_.size();
}

Moments Shape::between(std::size_t from, std::size_t to) const {
    Moments sum = up_to_[to] - up_to_[from];
    if (to < from) sum += whole_;
    return sum;
}

ShapePart::ShapePart(const Shape& shape) : shape_(&shape) {
    if (!shape.convex()) {
        polygon_ = shape.outline_;
        return;
    }
    const Polygon& outline = shape.outline_;
    pieces_[count_++] = {outline.front(), outline.front(), 1, outline.size() - 1};
}

bool ShapePart::empty() const { return shape_->convex() ? count_ == 0 : polygon_.size() < 3; }

std::size_t ShapePart::corner(const Piece& piece, std::size_t at) const {
    const std::size_t after = piece.first + at - 1, corners = shape_->outline_.size();
    return after < corners ? after : after - corners;
}

Point ShapePart::place(const Piece& piece, std::size_t at) const {
    if (at == 0) return piece.from;
    return at <= piece.count ? shape_->outline_[corner(piece, at)] : piece.to;
}

ShapePart& ShapePart::keep(const LinearField& inside) {
    if (!shape_->convex()) {
        polygon_ = clip_half_plane(polygon_, -inside.at_origin, -inside.slope_x, -inside.slope_y);
        return *this;
    }
    std::array<Piece, most_pieces> before;
    const std::size_t count = std::exchange(count_, 0);
    std::copy_n(pieces_.begin(), count, before.begin());
    const double way = std::atan2(inside.slope_y, inside.slope_x);
    const std::array<std::size_t, 2> turning{shape_->farthest(way), shape_->farthest(way + std::numbers::pi)};
    for (std::size_t at = 0; at < count; ++at) keep_of(before[at], inside, turning);
    if (count_ > 0 && !(pieces_[count_ - 1].to == pieces_[0].from))
        push({pieces_[count_ - 1].to, pieces_[0].from, 0, 0});
    return *this;
}

void ShapePart::push(const Piece& piece) {
    if (count_ == most_pieces) throw std::logic_error("a shape was cut too often");
    pieces_[count_++] = piece;
}

void ShapePart::append(const Piece& piece) {
    if (count_ > 0 && !(pieces_[count_ - 1].to == piece.from)) push({pieces_[count_ - 1].to, piece.from, 0, 0});
    push(piece);
}

void ShapePart::keep_of(const Piece& piece, const LinearField& inside, const std::array<std::size_t, 2>& turning) {
    const std::size_t last = piece.count + 1, corners = shape_->outline_.size();
    // Between these places the field only grows or only falls.
    std::array<std::size_t, 4> breaks{0, last, last, last};
    std::size_t parts = 1;
    for (const std::size_t turn : turning) {
        const std::size_t at = (turn >= piece.first ? turn - piece.first : turn + corners - piece.first) + 1;
        if (at > piece.count) continue;
        breaks[parts++] = at;
    }
    if (parts == 3 && breaks[1] > breaks[2]) std::swap(breaks[1], breaks[2]);
    breaks[parts] = last;
    const auto value = [&](std::size_t at) { return inside.at(place(piece, at)); };
    bool open = value(0) >= 0.0;
    Point from = piece.from;
    std::size_t first = 1;
    const auto end_run = [&](Point to, std::size_t end) {
        append({from, to, first <= piece.count ? corner(piece, first) : 0, end > first ? end - first : 0});
    };
    for (std::size_t part = 0; part < parts; ++part) {
        std::size_t low = breaks[part], high = breaks[part + 1];
        if ((value(high) >= 0.0) == open) continue;
        while (high - low > 1) {
            const std::size_t middle = low + (high - low) / 2;
            ((value(middle) >= 0.0) == open ? low : high) = middle;
        }
        const Point cut = crossing(place(piece, low), value(low), place(piece, high), value(high));
        if (open) {
            end_run(cut, high);
        } else {
            from = cut;
            first = high;
        }
        open = !open;
    }
    if (open) end_run(piece.to, last);
}

Moments ShapePart::moments() const {
    const Point reference = shape_->reference_;
    if (!shape_->convex()) return area_moments(polygon_, reference).about_reference;
    Moments sum;
    for (std::size_t at = 0; at < count_; ++at) {
        const Piece& piece = pieces_[at];
        if (piece.count == 0) {
            sum += side_moments(piece.from, piece.to, reference);
            continue;
        }
        const std::size_t first = piece.first, last = corner(piece, piece.count);
        sum += side_moments(piece.from, shape_->outline_[first], reference);
        if (piece.count > 1) sum += shape_->between(first, last);
        sum += side_moments(shape_->outline_[last], piece.to, reference);
    }
    return sum;
}

Interval ShapePart::extent(double x, double y) const {
    const auto along = [x, y](Point point) { return x * point.x + y * point.y; };
    const Point start = shape_->convex() ? pieces_[0].from : polygon_.front();
    Interval extent{along(start), along(start)};
    const auto widen = [&](Point point) {
        extent = {std::min(extent.from, along(point)), std::max(extent.to, along(point))};
    };
    for (const Point corner : polygon_) widen(corner);
    if (!shape_->convex()) return extent;
    const double way = std::atan2(y, x);
    const std::size_t corners = shape_->outline_.size();
    const std::array<std::size_t, 2> ends{shape_->farthest(way), shape_->farthest(way + std::numbers::pi)};
    for (std::size_t at = 0; at < count_; ++at) {
        const Piece& piece = pieces_[at];
        widen(piece.from);
        if (piece.count == 0) continue;
        widen(shape_->outline_[piece.first]);
        widen(shape_->outline_[corner(piece, piece.count)]);
        for (const std::size_t end : ends) {
            const std::size_t after = end >= piece.first ? end - piece.first : end + corners - piece.first;
            if (after < piece.count) widen(shape_->outline_[end]);
        }
    }
    return extent;
}

}  // namespace toehold::mechanics
