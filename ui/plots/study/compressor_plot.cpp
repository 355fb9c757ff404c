#include "ui/plots/study/compressor_plot.h"

#include "core/gas/models/wheel_lines.h"
#include "core/study/speed_sweep.h"
#include "core/units.h"
#include "ui/base/curve.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/study/wheel_plot.h"

#include <QLabel>
#include <QMenu>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr int pointCount = 13, lineCount = 6;
constexpr double slowest = 0.3, fastest = 1.4; ///< of the design's speed

/// Round speeds of a wheel between two [rad/s]: multiples of 1, 2 or 5 times a power of ten 1/min.
std::vector<double> roundSpeeds(double low, double high) {
    const double spacing = (high - low) / (lineCount - 1) / units::revPerMinute;
    const double power = std::pow(10.0, std::floor(std::log10(spacing)));
    const double share = spacing / power;
    const double step = power *
                        (share < 1.5   ? 1.0
                         : share < 3.5 ? 2.0
                         : share < 7.5 ? 5.0
                                       : 10.0) *
                        units::revPerMinute;
    std::vector<double> speeds;
    for (double k = std::ceil(low / step - 1e-9); k * step <= high * (1.0 + 1e-9); k += 1.0)
        speeds.push_back(k * step);
    return speeds;
}

} // namespace

CompressorPlot::CompressorPlot(QWidget* parent)
    : StudyPane(tr("Compressor over speed"), parent), plot_(new WheelPlot(this)) {
    setPlot(*plot_);
    stateLabel().setWordWrap(true);
    plot_->setMouseTracking(true);
    connect(plot_, &QCustomPlot::mouseMove, this, [this](QMouseEvent* event) {
        readOut(unitFor(QStringLiteral("kg/s"))
                    .metric(plot_->xAxis->pixelToCoord(event->position().x())),
                plot_->yAxis->pixelToCoord(event->position().y()));
    });
    watch(runner_, {[this] { start(); },
                    [this](const study::Point& point) {
                        points_.insert_or_assign(point.parameter, point);
                        refill();
                    },
                    [this](const study::Table& table) {
                        points_.clear();
                        for (const study::Point& point : table.points)
                            points_.emplace(point.parameter, point);
                    }});
    sayState();
}

bool CompressorPlot::hasWheel() const {
    return solution_ && solution_->design.gas.supply.kind == gas::SupplyKind::compressor;
}

void CompressorPlot::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    start();
}

void CompressorPlot::start() {
    if (!mayStart(runner_, hasWheel())) {
        if (!hasWheel()) {
            points_.clear();
            plot_->clearWheel();
        }
        refill();
        sayState();
        return;
    }
    const double speed = solution_->design.running.speed / units::revPerMinute;
    auto names = study::speedSweepFigures(solution_->design);
    if (names != names_)
        points_.clear();
    names_ = std::move(names);
    std::erase_if(points_, [&](const auto& entry) {
        return entry.first < 0.999 * slowest * speed || entry.first > 1.001 * fastest * speed;
    });
    runner_.request(
        [design = solution_->design, speed](Monitor& monitor, const study::PointSink& sink) {
            return study::speedSweep(design, slowest * speed, fastest * speed, pointCount, {},
                                     monitor, sink);
        });
    refill();
    sayState();
}

std::optional<CompressorPlot::Run> CompressorPlot::runOf(const study::Point& point) const {
    const auto value = [&](const char* name) -> std::optional<double> {
        const auto place = std::ranges::find(names_, name);
        const auto index = static_cast<std::size_t>(place - names_.begin());
        return index < point.values.size() ? point.values[index] : std::nullopt;
    };
    const auto flow = value("compressor_corrected_flow_kg_per_s");
    const auto ratio = value("compressor_pressure_ratio");
    if (!flow || !ratio)
        return std::nullopt;
    return Run{point.parameter,
               value("compressor_speed_rpm").value_or(0.0),
               *flow,
               *ratio,
               value("compressor_efficiency").value_or(0.0),
               value("compressor_surge_margin").value_or(0.0)};
}

void CompressorPlot::refill() {
    std::vector<WheelPlot::Place> line;
    double low = 0.0, high = 0.0;
    const auto take = [&](double wheelSpeed) {
        low = low > 0.0 ? std::min(low, wheelSpeed) : wheelSpeed;
        high = std::max(high, wheelSpeed);
    };
    for (const auto& [speed, point] : points_) {
        if (const auto run = runOf(point)) {
            line.push_back({run->flow, run->ratio});
            take(run->wheelSpeed * units::revPerMinute);
        }
    }
    std::vector<WheelPlot::Place> own;
    const auto flow = figureValue(solution_, "compressor_corrected_flow_kg_per_s");
    const auto ratio = figureValue(solution_, "compressor_pressure_ratio");
    const auto wheelSpeed = figureValue(solution_, "compressor_speed_rpm");
    if (hasWheel() && flow && ratio && wheelSpeed) {
        own.push_back({*flow, *ratio});
        take(*wheelSpeed * units::revPerMinute);
    }
    if (hasWheel() && high > 0.0) {
        const gas::Supply& supply = solution_->design.gas.supply;
        const gas::Wheel& wheel = supply.compressor.wheel;
        const double corrected = std::sqrt(wheel.referenceTemperature / supply.ambientTemperature);
        const bool isMeasured = wheel.characteristic == gas::WheelCharacteristic::table;
        plot_->setWheel(wheel, isMeasured ? gas::measuredSpeeds(wheel)
                                          : roundSpeeds(std::max(0.3 * high, 0.8 * low) * corrected,
                                                        1.1 * high * corrected));
    }
    plot_->setOperatingLine(line);
    plot_->setPoints(own);
    readOut(own.empty() ? 0.0 : own.front().flow, own.empty() ? 0.0 : own.front().ratio);
}

StudyPane::Count CompressorPlot::count() const {
    const auto known = static_cast<qsizetype>(points_.size());
    const auto failed =
        std::ranges::count_if(points_, [this](const auto& entry) { return !runOf(entry.second); });
    return {known, pointCount, failed, known};
}

QString CompressorPlot::restingWords() const {
    return hasWheel() ? tr("Lines: corrected speed of the wheel in rpm. Left of the dashed line it "
                           "surges.")
                      : tr("The air supply has no compressor wheel.");
}

/// The point of the operating line that is nearest on the plot.
QString CompressorPlot::readOut(double flow, double ratio) {
    std::optional<Run> nearest;
    double least = 0.0;
    for (const auto& [speed, point] : points_) {
        const auto run = runOf(point);
        if (!run)
            continue;
        const Unit unit = unitFor(QStringLiteral("kg/s"));
        const double away =
            std::hypot((unit.shown(run->flow) - unit.shown(flow)) / plot_->xAxis->range().size(),
                       (run->ratio - ratio) / plot_->yAxis->range().size());
        if (!nearest || away < least) {
            nearest = run;
            least = away;
        }
    }
    std::vector<ReadoutStrip::Item> items;
    const auto item = [&](const QString& label, std::optional<double> value, const QString& unit) {
        items.push_back(
            {QPen(Qt::NoPen), label, value ? shortText(*value) : QString(), unit, QString()});
    };
    const auto of = [&](double Run::*member) {
        return nearest ? std::optional((*nearest).*member) : std::nullopt;
    };
    const Unit unit = unitFor(QStringLiteral("kg/s"));
    const auto passed = of(&Run::flow);
    item(tr("shaft"), of(&Run::speed), tr("rpm"));
    item(tr("wheel"), of(&Run::wheelSpeed), tr("rpm"));
    item(tr("corrected flow"), passed ? std::optional(unit.shown(*passed)) : std::nullopt,
         unit.text);
    item(tr("pressure ratio"), of(&Run::ratio), {});
    item(tr("efficiency"), of(&Run::efficiency), {});
    item(tr("surge margin"), of(&Run::surgeMargin), {});
    QStringList text;
    for (const ReadoutStrip::Item& made : items)
        text << made.label + QLatin1Char(' ') + made.value;
    readout().setItems(std::move(items));
    return text.join(QLatin1String("; "));
}

void CompressorPlot::addOptions(QMenu& menu) {
    menu.addAction(tr("Import measured &compressor points…"), this,
                   [this] { Q_EMIT wheelWanted(); });
    menu.addSeparator();
    addPictureActions(menu, *this, title());
}

} // namespace lobewright::ui
