#include "mechanics/plate_limit/thin_factor.h"

#include <algorithm>

namespace toehold::mechanics {
namespace {

using Rows = std::vector<std::vector<int>>;

/// Below the diagonal of each column, in no order and more than once.
Rows meeting(std::span<const std::array<int, 6>> groups, std::size_t size) {
    Rows below(size);
    for (const std::array<int, 6>& group : groups) {
        for (const int one : group) {
            for (const int other : group) {
                if (one >= 0 && other > one) below[static_cast<std::size_t>(one)].push_back(other);
            }
        }
    }
    return below;
}

/// What factoring fills in besides: a column's rows come up again in the column of the first of them.
Rows filled(Rows below) {
    for (std::vector<int>& rows : below) {
        std::sort(rows.begin(), rows.end());
        rows.erase(std::unique(rows.begin(), rows.end()), rows.end());
        if (rows.size() < 2) continue;
        std::vector<int>& next = below[static_cast<std::size_t>(rows.front())];
        next.insert(next.end(), rows.begin() + 1, rows.end());
    }
    return below;
}

}  // namespace

ThinFactor::ThinFactor(std::span<const std::array<int, 6>> groups, int size) : size_(static_cast<std::size_t>(size)) {
    const Rows below = filled(meeting(groups, size_));
    starts_.push_back(0);
    for (const std::vector<int>& rows : below) {
        rows_.insert(rows_.end(), rows.begin(), rows.end());
        starts_.push_back(rows_.size());
    }
    values_.resize(size_ + rows_.size());
    find_targets();
}

void ThinFactor::find_targets() {
    for (std::size_t column = 0; column < size_; ++column) {
        for (std::size_t first = begin_of(column); first < end_of(column); ++first) {
            std::size_t at = begin_of(static_cast<std::size_t>(rows_[first]));
            for (std::size_t second = first + 1; second < end_of(column); ++second, ++at) {
                while (rows_[at] < rows_[second]) ++at;
                targets_.push_back(static_cast<int>(size_ + at));
            }
        }
    }
}

int ThinFactor::place(int one, int other) const {
    const auto [column, row] = std::minmax({one, other});
    if (row == column) return row;
    const auto first = rows_.begin() + static_cast<std::ptrdiff_t>(begin_of(static_cast<std::size_t>(column)));
    const auto end = rows_.begin() + static_cast<std::ptrdiff_t>(end_of(static_cast<std::size_t>(column)));
    return static_cast<int>(size_) + static_cast<int>(std::lower_bound(first, end, row) - rows_.begin());
}

bool ThinFactor::factor() {
    double* const diagonal = values_.data();
    double* const below = diagonal + size_;
    const int* target = targets_.data();
    for (std::size_t column = 0; column < size_; ++column) {
        if (!(diagonal[column] > 0.0)) return false;
        const double inverse = 1.0 / diagonal[column];
        const std::size_t end = end_of(column);
        for (std::size_t first = begin_of(column); first < end; ++first) {
            const double share = below[first] * inverse;
            diagonal[rows_[first]] -= share * below[first];
            for (std::size_t second = first + 1; second < end; ++second) diagonal[*target++] -= share * below[second];
        }
        for (std::size_t at = begin_of(column); at < end; ++at) below[at] *= inverse;
    }
    return true;
}

Eigen::VectorXd ThinFactor::solve(Eigen::VectorXd right) const {
    const double* const below = values_.data() + size_;
    double* const x = right.data();
    for (std::size_t column = 0; column < size_; ++column) {
        const double value = x[column];
        for (std::size_t at = begin_of(column); at < end_of(column); ++at) x[rows_[at]] -= below[at] * value;
    }
    for (std::size_t column = size_; column-- > 0;) {
        double value = x[column] / values_[column];
        for (std::size_t at = begin_of(column); at < end_of(column); ++at) value -= below[at] * x[rows_[at]];
        x[column] = value;
    }
    return right;
}

}  // namespace toehold::mechanics
