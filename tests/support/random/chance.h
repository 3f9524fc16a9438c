#pragma once
// What random details are picked with.
#include <rapidcheck.h>

#include <cmath>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace toehold::test {

/// Picks of RapidCheck's, within a generator. `fits`: numbers are such that the parts of a detail fit each other; else
/// they only have the sign the file asks for.
class Chance {
  public:
    explicit Chance(bool fits) : fits_(fits) {}
    [[nodiscard]] bool fits() const { return fits_; }

    /// A number with all its digits; where it need not fit, one of the sign that `low` allows.
    [[nodiscard]] double between(double low, double high) const {
        return fits_ ? low + (high - low) * fraction() : wild(low);
    }
    /// This number; where it need not fit, one of its sign.
    [[nodiscard]] double about(double value) const { return fits_ ? value : wild(value); }
    [[nodiscard]] int whole(int low, int high) const { return *rc::gen::inRange(low, high + 1); }
    /// Of things that may be as many as they like.
    [[nodiscard]] int count(int low, int high) const { return whole(low, fits_ ? high : 10000); }
    [[nodiscard]] bool coin() const { return whole(0, 1) == 1; }
    template <class Value>
    [[nodiscard]] Value one_of(std::vector<Value> values) const {
        return values[static_cast<std::size_t>(whole(0, static_cast<int>(values.size()) - 1))];
    }
    [[nodiscard]] std::string words() const {
        return one_of<std::string>({"", "plain", "a \"b\" <c> & 'd'", "two\nlines\r\n\ttab", "\u00d8 50 \U000233B4",
                                    " blank ", "{} {0} %s", "--> ]]> &amp;"});
    }
    [[nodiscard]] std::string id() const { return "id-" + std::to_string(whole(1, 99)) + "/8"; }
    /// An id that begins with `stem`, as awkward as a file allows.
    [[nodiscard]] std::string own_id(const std::string& stem) const {
        return stem + one_of<std::string>({"", "", "/8", "-plate", ",{}", "\u00d8"});
    }
    [[nodiscard]] std::optional<double> perhaps(double low, double high) const {
        return coin() ? std::optional(between(low, high)) : std::nullopt;
    }
    [[nodiscard]] double given(double low, double high) const { return coin() ? between(low, high) : 0.0; }

  private:
    static double fraction() {
        constexpr std::int64_t steps = std::int64_t{1} << 53;
        return static_cast<double>(*rc::gen::inRange<std::int64_t>(0, steps)) / static_cast<double>(steps);
    }
    [[nodiscard]] double wild(double sign) const {
        const double size = (0.1 + fraction()) * std::pow(10.0, whole(-6, 6));
        return sign < 0.0 && coin() ? -size : size;
    }

    bool fits_;
};

}  // namespace toehold::test
