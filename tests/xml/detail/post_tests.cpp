// Bars, stubs, certificates and closed shoes in the file: read, written back, and refused where they do not belong.
#include "xml/samples.h"

using namespace toehold;
using namespace toehold::model;

namespace {

/// The plain detail with this post.
std::string with_post(const std::string& post) {
    std::string text = test::plain_detail();
    const std::size_t from = text.find("<post");
    const std::size_t to = text.find("/>", from) + 2;
    return text.replace(from, to - from, post);
}

Post post_of(const std::string& text) {
    const xml::DetailRead read = xml::read_detail_text(text, "detail.xml");
    INFO(test::sentences(read.problems));
    REQUIRE(read.detail);
    return read.detail->post;
}

/// What is read, after a round trip as well.
Post twice(const std::string& post) {
    const xml::DetailRead read = xml::read_detail_text(with_post(post), "detail.xml");
    INFO(test::sentences(read.problems));
    REQUIRE(read.detail);
    CHECK(post_of(xml::write_detail(*read.detail)) == read.detail->post);
    return read.detail->post;
}

}  // namespace

TEST_CASE("bars and twin bars are read and written", "[unit]") {
    CHECK(std::get<SolidBar>(twice(R"(<post shape="bar" width="1/2 in" depth="2 1/2 in" metal="steel-a36"/>)")) ==
          SolidBar{0.5, 2.5, false, "steel-a36"});
    CHECK(std::get<SolidBar>(twice(R"(<post shape="round-bar" diameter="1 1/2 in" metal="steel-a36"/>)")) ==
          SolidBar{1.5, 1.5, true, "steel-a36"});
    CHECK(std::get<TwinBars>(twice(R"(<post shape="twin-bars" width="1/2 in" depth="2 1/2 in" gap="1 in" apart="x")"
                                   R"( metal="steel-a36"/>)")) == TwinBars{0.5, 2.5, 1.0, PlanAxis::x, "steel-a36"});
}

TEST_CASE("a tube has its stub and its certificate", "[unit]") {
    const auto tube = std::get<RectangularTube>(
        twice(R"(<post shape="square-tube" width="2 in" wall="3/16 in" metal="steel-a513">)"
              R"(<certificate yield="50 ksi" ultimate="60 ksi" source="heat 7, invented"/>)"
              R"(<stub width="1 9/16 in" depth="1 9/16 in" height="6 in" metal="steel-a36" fixing="through-bolt"/>)"
              R"(</post>)"));
    CHECK(tube.certificate == Certificate{50000.0, 60000.0, "heat 7, invented"});
    CHECK(tube.stub == Stub{1.5625, 1.5625, 0.0, 6.0, "steel-a36", StubFixing::through_bolt});
    const auto round = std::get<RoundTube>(
        twice(R"(<post shape="round-tube" diameter="2 in" wall="1/8 in" metal="steel-a500-b-round">)"
              R"(<stub diameter="1 11/16 in" wall="1/4 in" height="5 in" metal="steel-a36"/></post>)"));
    CHECK(round.stub == Stub{1.6875, 1.6875, 0.25, 5.0, "steel-a36", StubFixing::none});
}

TEST_CASE("a stub or a certificate where there is none is refused", "[bad-input]") {
    const auto problems = [](const std::string& post) {
        return xml::read_detail_text(with_post(post), "detail.xml").problems;
    };
    CHECK_FALSE(problems(R"(<post shape="bar" width="1 in" depth="1 in" metal="steel-a36">)"
                         R"(<stub width="1 in" depth="1 in" height="6 in" metal="steel-a36"/></post>)")
                    .empty());
    CHECK_FALSE(
        problems(R"(<post shape="twin-bars" width="1/2 in" depth="2 in" gap="1 in" apart="z" metal="m"/>)").empty());
    CHECK_FALSE(problems(R"(<post shape="square-tube" width="2 in" wall="1/8 in" metal="steel-a513">)"
                         R"(<certificate yield="50 ksi" ultimate="60 ksi"/></post>)")
                    .empty());
}
