// What decides a result, against functions whose indices are known.
#include "core/unknowns/bands.h"
#include "core/unknowns/decides.h"
#include "tests/unknowns/toy.h"

namespace lobewright::unknowns::testing {
namespace {

/// T. Ishigami, T. Homma, "An importance quantification technique in uncertainty analysis for
/// computer models", 1990, with a = 7 and b = 0.1: f = sin x₁ + a·sin² x₂ + b·x₃⁴·sin x₁ on ∓π.
double ishigami(const double* x) {
    return std::sin(x[0]) + 7.0 * std::sin(x[1]) * std::sin(x[1]) +
           0.1 * std::pow(x[2], 4) * std::sin(x[0]);
}

/// Its indices in closed form: variance a²/8 + b·π⁴/5 + b²·π⁸/18 + ½.
struct Exact {
    double first[3], total[3];
};
Exact ishigamiIndices() {
    const double p4 = std::pow(std::numbers::pi, 4), a = 7.0, b = 0.1;
    const double v1 = 0.5 * std::pow(1.0 + b * p4 / 5.0, 2), v2 = a * a / 8.0;
    const double v13 = b * b * p4 * p4 * (1.0 / 18.0 - 1.0 / 50.0);
    const double v = v1 + v2 + v13;
    return {{v1 / v, v2 / v, 0.0}, {(v1 + v13) / v, v2 / v, v13 / v}};
}

const std::vector<Marginal> aroundZero(3, uniform(-std::numbers::pi, std::numbers::pi));

const Influence& of(const Decision& decision, std::size_t unknown) {
    return *std::ranges::find(decision.influences, unknown, &Influence::unknown);
}

TEST(Decides, IshigamiHasItsPublishedIndices) {
    const Exact exact = ishigamiIndices();
    EXPECT_NEAR(exact.first[0], 0.3139, 1e-4); // as published
    EXPECT_NEAR(exact.first[1], 0.4424, 1e-4);
    EXPECT_NEAR(exact.total[2], 0.2437, 1e-4);
    for (const auto& [samples, tolerance] : {std::pair{512L, 0.02}, std::pair{4096L, 0.005}}) {
        const Matrix x = drawn(aroundZero, samples);
        const auto decision = decide(library(), x, evaluated(x, ishigami), aroundZero);
        ASSERT_TRUE(decision);
        EXPECT_TRUE(decision->isOfSurrogate) << decision->quality.value_or(-1.0);
        for (std::size_t i = 0; i < 3; ++i) {
            EXPECT_NEAR(of(*decision, i).first, exact.first[i], tolerance) << samples << " " << i;
            EXPECT_NEAR(*of(*decision, i).total, exact.total[i], tolerance) << samples << " " << i;
        }
        EXPECT_EQ(of(*decision, 0).direction, Direction::rises);
        EXPECT_EQ(of(*decision, 1).direction, Direction::mixed);
    }
}

/// A library without surrogates, so that the points speak for themselves.
class OnlyPoints final : public Statistics {
  public:
    Matrix sobolPoints(int unknowns, long from, long to) const override {
        return library().sobolPoints(unknowns, from, to);
    }
    std::optional<Surrogate> fit(const Matrix&, const Samples&,
                                 std::span<const Marginal>) const override {
        return std::nullopt;
    }
};

TEST(Decides, IndicesOfThePointsAloneLieWithinTheirConfidence) {
    const Exact exact = ishigamiIndices();
    for (const long samples : {512L, 4096L}) {
        const Matrix x = drawn(aroundZero, samples);
        const auto decision = decide(OnlyPoints(), x, evaluated(x, ishigami), aroundZero);
        ASSERT_TRUE(decision);
        EXPECT_FALSE(decision->isOfSurrogate);
        for (std::size_t i = 0; i < 3; ++i) {
            const Influence& found = of(*decision, i);
            ASSERT_TRUE(found.error);
            EXPECT_NEAR(found.first, exact.first[i], *found.error + 1e-12) << samples << " " << i;
            EXPECT_LT(*found.error, samples == 512 ? 0.25 : 0.1);
            EXPECT_FALSE(found.total);
        }
    }
}

/// y = 3·x₁ − 2·x₂ + x₃ over a width of 2: variances 9 : 4 : 1.
const std::vector<Marginal> widthTwo(3, uniform(-1.0, 1.0));
double line(const double* x) {
    return 3.0 * x[0] - 2.0 * x[1] + x[2];
}

TEST(Decides, ALinearModelIsExact) {
    const Matrix x = drawn(widthTwo, 128);
    const auto decision = decide(library(), x, evaluated(x, line), widthTwo);
    ASSERT_TRUE(decision);
    EXPECT_NEAR(*decision->quality, 1.0, 1e-9);
    const double shares[] = {9.0 / 14.0, 4.0 / 14.0, 1.0 / 14.0};
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(decision->influences[i].unknown, i);
        EXPECT_NEAR(decision->influences[i].first, shares[i], 1e-9);
        EXPECT_NEAR(*decision->influences[i].total, shares[i], 1e-9);
    }
    EXPECT_EQ(of(*decision, 0).direction, Direction::rises);
    EXPECT_EQ(of(*decision, 1).direction, Direction::falls);
}

TEST(Decides, MeasuringAsAdvisedHalvesTheDeviation) {
    const Matrix x = drawn(widthTwo, 4096);
    const Samples y = evaluated(x, line);
    const auto decision = decide(library(), x, y, widthTwo);
    const Advice advice = halving(*decision, widthTwo);
    ASSERT_EQ(advice.measurements.size(), 2u); // 9/14 alone is too little
    auto measured = widthTwo;
    for (const auto& measurement : advice.measurements) {
        measured[measurement.unknown] = uniform(-measurement.accuracy, measurement.accuracy);
    }
    const Samples after = evaluated(drawn(measured, 4096), line);
    const auto deviation = [](const Samples& v) {
        return std::sqrt((v - v.mean()).square().mean());
    };
    EXPECT_LE(deviation(after), 0.5 * deviation(y) * 1.001);
    EXPECT_GE(deviation(after), 0.47 * deviation(y)); // accuracies are rounded down
    // And the first alone gains what is said of it.
    auto first = widthTwo;
    first[advice.measurements[0].unknown] = measured[advice.measurements[0].unknown];
    const Samples half = evaluated(drawn(first, 4096), line);
    EXPECT_NEAR(deviation(half) / deviation(y), 1.0 - advice.byFirst, 0.005);
}

TEST(Decides, OneDominantUnknownIsToBeMeasuredAlone) {
    const Matrix x = drawn(widthTwo, 128);
    const auto decision =
        decide(library(), x, evaluated(x, [](const double* v) { return 5.0 * v[1] + 0.5 * v[0]; }),
               widthTwo);
    const Advice advice = halving(*decision, widthTwo);
    ASSERT_EQ(advice.measurements.size(), 1u);
    EXPECT_EQ(advice.measurements[0].unknown, 1u);
    EXPECT_LT(advice.measurements[0].accuracy, 0.5);
    EXPECT_GT(advice.measurements[0].accuracy, 0.45);
    // The accuracy goes with the width of the range.
    const std::vector<Marginal> widthTwenty(3, uniform(-10.0, 10.0));
    const Advice wide = halving(*decision, widthTwenty);
    ASSERT_EQ(wide.measurements.size(), 1u);
    EXPECT_NEAR(wide.measurements[0].accuracy, 10.0 * advice.measurements[0].accuracy, 1e-9);
}

TEST(Decides, ManyEqualUnknownsCannotBeHalvedByThree) {
    const std::vector<Marginal> eight(8, uniform(-1.0, 1.0));
    const Matrix x = drawn(eight, 256);
    const auto decision =
        decide(library(), x,
               evaluated(x,
                         [](const double* v) {
                             return v[0] + v[1] + v[2] + v[3] + v[4] + v[5] + v[6] + v[7];
                         }),
               eight);
    const Advice advice = halving(*decision, eight);
    EXPECT_TRUE(advice.measurements.empty());
    EXPECT_NEAR(advice.narrowing, 1.0 - std::sqrt(7.0 / 8.0), 1e-6);
}

TEST(Decides, AChoiceOfTwoIsAnUnknownLikeAnyOther) {
    std::vector<Marginal> marginals = widthTwo;
    marginals[1] = {.kind = Marginal::Kind::choice, .options = 2};
    const Matrix x = drawn(marginals, 256);
    // Variances: 1/3 of the line, 4·¼ of the choice.
    const auto f = [](const double* v) { return v[0] + 2.0 * v[1]; };
    for (const Statistics* with : {&library(), static_cast<const Statistics*>(nullptr)}) {
        const OnlyPoints points;
        const auto decision = decide(with ? *with : points, x, evaluated(x, f), marginals);
        ASSERT_TRUE(decision);
        EXPECT_NEAR(of(*decision, 1).first, 0.75, with ? 1e-6 : 0.05);
        EXPECT_EQ(of(*decision, 1).direction, Direction::rises);
        const Advice advice = halving(*decision, marginals);
        ASSERT_FALSE(advice.measurements.empty());
        EXPECT_EQ(advice.measurements[0].unknown, 1u);
    }
}

/// Notes how far the work says that it is.
class Noting final : public Monitor {
  public:
    bool step(double fraction, const Message&) override {
        fractions.push_back(fraction);
        return true;
    }
    std::vector<double> fractions;
};

TEST(Decides, SaysHowManyResultsAreDone) {
    const Ensemble none;
    Noting monitor;
    ASSERT_TRUE(decideAll(library(), none, {"a", "b", "c", "d"}, monitor));
    EXPECT_EQ(monitor.fractions, (std::vector<double>{0.0, 0.25, 0.5, 0.75}));
}

TEST(Decides, ValuesThatAreAllTheSameAreDecidedByNothing) {
    const Matrix x = drawn(widthTwo, 64);
    EXPECT_FALSE(decide(library(), x, Samples::Constant(64, 3.0), widthTwo));
    EXPECT_FALSE(decide(library(), x.topRows(8), evaluated(x.topRows(8), line), widthTwo));
}

TEST(Decides, MissingValuesAreLeftOut) {
    const Matrix x = drawn(widthTwo, 128);
    Samples y = evaluated(x, line);
    y[3] = std::nan("");
    y[77] = std::nan("");
    const auto decision = decide(library(), x, y, widthTwo);
    ASSERT_TRUE(decision);
    EXPECT_NEAR(of(*decision, 0).first, 9.0 / 14.0, 1e-9);
}

} // namespace
} // namespace lobewright::unknowns::testing
