#include "tests/ui/scene_fixture.h"

#include "core/design/fields.h"
#include "core/design/file.h"
#include "core/units.h"
#include "tests/places.h"
#include "tests/ui/drawn_text.h"
#include "ui/base/palette.h"

#include <QDir>
#include <QPixmap>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>
#include <stdexcept>

namespace lobewright::ui::test {

namespace {

constexpr double mm = units::millimetre;
constexpr double deg = units::degree;

motion::Pattern twoLobePattern() {
    motion::SegmentShape shape;
    shape.stroke = 36.0 * mm;
    shape.segments = {{motion::SegmentKind::rise, 82.0 * deg, motion::Law::modifiedSine, {}},
                      {motion::SegmentKind::dwell, 4.0 * deg, motion::Law::harmonic, {}},
                      {motion::SegmentKind::fall, 78.0 * deg, motion::Law::modifiedSine, {}},
                      {motion::SegmentKind::dwell, 16.0 * deg, motion::Law::harmonic, {}}};
    return {2, shape};
}

} // namespace

design::Design twoLobeDesign() {
    design::Design design;
    design.title = "Fixture";
    auto& m = design.mechanism;
    m.cylinders = 3;
    m.pitchRadius = 95.0 * mm;
    m.bore = 64.0 * mm;
    m.clearance = 7.5 * mm;
    m.exhaustLead = 6.0 * deg;
    m.piston = mechanism::PistonGeometry{70.0 * mm, {4.0 * mm, 8.0 * mm}};
    m.roller = {16.0 * mm, 14.0 * mm, {}, 0.5 * mm};
    m.pistonMass = {0.62, 0.66};
    design.tracks.inlet = twoLobePattern();
    design.ports.inlet = {{7.5 * mm, 7.5 * mm, 12.0 * mm, 10, 1.5 * mm, 0.7}};
    design.ports.exhaust = {{10.5 * mm, 10.5 * mm, 12.0 * mm, 9, 1.5 * mm, 0.7}};
    design.running.speed = 1800.0 * units::revPerMinute;
    return design;
}

GeometryPointer geometryOf(const design::Design& design) {
    const auto inlet = motion::LiftCurve::make(design.tracks[End::inlet]);
    const auto exhaust = motion::LiftCurve::make(design.tracks[End::exhaust]);
    if (!inlet || !exhaust)
        throw std::runtime_error("fixture tracks are invalid");
    const auto pair = mechanism::OpposedPair::make(design.mechanism, {*inlet, *exhaust});
    if (!pair)
        throw std::runtime_error(pair.problems().front().message.english());
    const auto timing = ports::PortTiming::make(design.ports, *pair);
    if (!timing)
        throw std::runtime_error(timing.problems().front().message.english());
    return std::make_shared<const Geometry>(Geometry{design, *pair, *timing});
}

SolutionPointer inventedSolution(const design::Design& design) {
    const auto geometry = geometryOf(design);
    auto solution = std::make_shared<solution::Solution>(
        solution::Solution{design, geometry->pair, geometry->timing, {}, {}, {}, {}, {}, nullptr});
    const Eigen::Index samples = 721;
    solution->theta = Samples::LinSpaced(samples, 0.0, units::turn);
    const Samples volume = geometry->pair.volume(solution->theta);
    const double largest = volume.maxCoeff();
    const Samples pressure = 1.2 * (largest / volume).pow(1.3);
    Samples products(samples), force(samples);
    const double c = geometry->pair.cyclesPerTurn();
    const auto& centres = geometry->pair.deadCentres().front();
    for (Eigen::Index i = 0; i < samples; ++i) {
        const double cycle =
            std::remainder(c * (solution->theta[i] - centres.idc), units::turn) / deg;
        products[i] = cycle < -20.0 ? 12.0 : cycle < 30.0 ? 12.0 + 1.6 * (cycle + 20.0) : 92.0;
        force[i] = std::abs(cycle) > 160.0 ? 0.0 : 300.0 * pressure[i];
    }
    const auto add = [&](const char* name, const Samples& values) {
        solution::Channel channel;
        channel.name = name;
        channel.values = values;
        solution->channels.push_back(channel);
    };
    add("pressure_bar", pressure);
    add("temperature_K", 330.0 * pressure.pow(0.23));
    add("air_mass_mg", 100.0 - products);
    add("products_mass_mg", products);
    add("contact_force_inlet_N", force);
    add("contact_force_exhaust_N", 0.9 * force);
    gas::CycleSolution gas;
    gas.cycles.resize(geometry->timing.cycles().size());
    for (auto& figures : gas.cycles)
        figures.burnStart = -12.0 * deg;
    gas.plenumPressure = 1.3 * units::bar;
    solution->gas = gas;
    solution->design.gas.burn.duration = 50.0 * deg;
    return solution;
}

SolutionPointer solvedSample(const char* name) {
    const auto file = std::filesystem::path(lobewright::test::sourceFolder()) / "samples" /
                      (std::string(name) + ".lobewright.json");
    const auto design = design::loadDesign(file);
    if (!design)
        throw std::runtime_error(design.problems().front().message.english());
    SilentMonitor monitor;
    auto solved = solution::solve(*design, monitor);
    if (!solved)
        throw std::runtime_error(solved.problems().front().message.english());
    return std::make_shared<const solution::Solution>(std::move(solved).value());
}

Applied::Applied(TurnView& view, const design::Design& design) : design_(design) {
    view.showGeometry(geometryOf(design_));
    connect(&view, &TurnView::edited, this, [this, &view](const Edit& edit) {
        edits_.push_back(edit);
        design::Design changed = design_;
        for (const auto& change : edit.changes) {
            const auto next = design::withField(changed, change.path, change.value);
            if (!next) {
                throw std::runtime_error(change.path + ": " +
                                         next.problems().front().message.english());
            }
            changed = *next;
        }
        design_ = changed;
        view.showGeometry(geometryOf(design_));
    });
    connect(&view, &TurnView::editFinished, this, [this] { ++finished_; });
}

const Handle& handleNamed(const TurnView& view, const std::string& key) {
    for (const auto& handle : view.handles()) {
        if (handle.key == key)
            return handle;
    }
    throw std::runtime_error("no handle " + key);
}

void dragMouse(QWidget& widget, const QPointF& from, const QPointF& to,
               Qt::KeyboardModifiers modifiers, bool release) {
    const auto send = [&](QEvent::Type type, const QPointF& at, Qt::MouseButton button,
                          Qt::MouseButtons buttons) {
        QMouseEvent event(type, at, widget.mapToGlobal(at), button, buttons, modifiers);
        QApplication::sendEvent(&widget, &event);
    };
    send(QEvent::MouseButtonPress, from, Qt::LeftButton, Qt::LeftButton);
    for (int i = 1; i <= 8; ++i)
        send(QEvent::MouseMove, from + (to - from) * i / 8.0, Qt::NoButton, Qt::LeftButton);
    if (release)
        send(QEvent::MouseButtonRelease, to, Qt::LeftButton, Qt::NoButton);
}

double distanceToStretch(const QPointF& point, const QPointF& from, const QPointF& to) {
    const QPointF along = to - from;
    const double length2 = QPointF::dotProduct(along, along);
    const double share =
        length2 > 0.0 ? std::clamp(QPointF::dotProduct(point - from, along) / length2, 0.0, 1.0)
                      : 0.0;
    const QPointF off = point - from - share * along;
    return std::hypot(off.x(), off.y());
}

void expectPicture(QWidget& widget, const QString& name) {
    const QImage picture = widget.grab().toImage().convertToFormat(QImage::Format_RGB32);
    if (const QString folder = qEnvironmentVariable("LOBEWRIGHT_PICTURES"); !folder.isEmpty()) {
        QDir().mkpath(folder);
        picture.save(QDir(folder).filePath(name + QStringLiteral(".png")));
    }
    std::map<QRgb, int> tones;
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x)
            ++tones[picture.pixel(x, y)];
    }
    ASSERT_FALSE(tones.empty()) << name.toStdString();
    const auto ground =
        std::max_element(tones.begin(), tones.end(),
                         [](const auto& a, const auto& b) { return a.second < b.second; });
    const bool isDark = widget.palette().color(QPalette::Window).lightness() < 128;
    EXPECT_EQ(QColor(ground->first).lightness() < 128, isDark) << name.toStdString();
    const int all = picture.width() * picture.height();
    EXPECT_GT(all - ground->second, all / 100) << name.toStdString() << " is empty";
    for (const DrawnText& text : drawnText(widget)) {
        EXPECT_TRUE(QRectF(widget.rect()).intersects(text.box))
            << name.toStdString() << ": " << text.text.toStdString();
    }
}

void useTones(QWidget& widget, bool dark) {
    widget.setPalette((dark ? Palette::darkTones() : Palette::lightTones()).widgetPalette());
}

} // namespace lobewright::ui::test
