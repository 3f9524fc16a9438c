#pragma once
// An area in plan that is cut again and again by straight lines. A plate's rounded corners have hundreds of corners of
// their own; of a convex area a cut finds its two crossings by bisection, and the integrals of all corners between them
// stand ready as sums. Any consistent unit of length.
#include "mechanics/plane/area_moments.h"
#include "mechanics/plane/geometry.h"

#include <array>
#include <cstddef>
#include <vector>

namespace toehold::mechanics {

class Shape {
  public:
    /// A simple polygon, counter-clockwise. One that is not convex is cut corner by corner.
    explicit Shape(Polygon outline);

    [[nodiscard]] const Polygon& outline() const { return outline_; }
    [[nodiscard]] bool convex() const { return !turns_rad_.empty(); }
    [[nodiscard]] Point reference() const { return reference_; }  ///< near its middle
    /// Integrals of x and y from the reference.
    [[nodiscard]] const Moments& moments() const { return whole_; }
    /// The corner of a convex shape that lies farthest that way; from it on, and up to it, corners lie ever nearer.
    [[nodiscard]] std::size_t farthest(double way_rad) const;

  private:
    friend class ShapePart;

    /// Of the sides from one corner on to another, about the reference.
    [[nodiscard]] Moments between(std::size_t from, std::size_t to) const;

    Polygon outline_;
    Point reference_;
    Moments whole_;
    std::vector<Moments> up_to_;     ///< of the sides before each corner; of a convex one
    std::vector<double> turns_rad_;  ///< direction of the side after each corner, growing; empty: not convex
};

/// What half planes leave of a shape.
class ShapePart {
  public:
    /// All of it. The shape outlives this, and stays where it is.
    explicit ShapePart(const Shape& shape);

    /// Keeps where `inside` >= 0. A convex shape may be cut six times at most.
    ShapePart& keep(const LinearField& inside);

    [[nodiscard]] const Shape& shape() const { return *shape_; }
    [[nodiscard]] bool empty() const;
    /// Integrals of x and y from the shape's reference. A part less than about a hundredth as deep as the shape keeps
    /// fewer digits than `moments_below` would.
    [[nodiscard]] Moments moments() const;
    /// Least and greatest of x px + y py; not of an empty part.
    [[nodiscard]] Interval extent(double x, double y) const;

  private:
    /// A length of the boundary: a point, corners of the outline one after the other, and a point.
    struct Piece {
        Point from, to;
        std::size_t first = 0, count = 0;
    };
    /// Of a piece, by their places: 0 is `from`, then the corners, then `to`.
    [[nodiscard]] Point place(const Piece& piece, std::size_t at) const;
    [[nodiscard]] std::size_t corner(const Piece& piece, std::size_t at) const;
    void keep_of(const Piece& piece, const LinearField& inside, const std::array<std::size_t, 2>& turning);
    /// At the end of those there are, by a straight length where they do not meet.
    void append(const Piece& piece);
    void push(const Piece& piece);

    static constexpr std::size_t most_pieces = 16;
    const Shape* shape_;
    Polygon polygon_;  ///< of a shape that is not convex
    std::array<Piece, most_pieces> pieces_;
    std::size_t count_ = 0;
};

}  // namespace toehold::mechanics
