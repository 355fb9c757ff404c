#include "ui/window/views.h"

#include "ui/claims/claims_pane.h"
#include "ui/panels/figures_view.h"
#include "ui/panels/limits_list.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/contact/contact_map_plot.h"
#include "ui/plots/contact/stress_plot.h"
#include "ui/plots/study/bands_plot.h"
#include "ui/plots/study/comparison_pane.h"
#include "ui/plots/study/compressor_plot.h"
#include "ui/plots/study/decides_view.h"
#include "ui/plots/study/figure_bars.h"
#include "ui/plots/study/load_map_plot.h"
#include "ui/plots/study/phase_plot.h"
#include "ui/plots/study/ranges_view.h"
#include "ui/plots/study/supply_strip.h"
#include "ui/plots/study/torque_curve.h"
#include "ui/plots/turn/channel_plot.h"
#include "ui/plots/turn/free_body.h"
#include "ui/plots/turn/law_pane.h"
#include "ui/plots/turn/lever_plot.h"
#include "ui/plots/turn/lobe_factors.h"
#include "ui/plots/turn/port_plot.h"
#include "ui/plots/turn/position_plot.h"
#include "ui/plots/turn/pressure_volume_plot.h"
#include "ui/plots/turn/timing_circle.h"
#include "ui/plots/turn/torque_plot.h"
#include "ui/plots/turn/width_plot.h"
#include "ui/scene/base/part_names.h"
#include "ui/scene/section/clock_view.h"
#include "ui/scene/section/cylinder_circle.h"
#include "ui/scene/section/section_view.h"
#include "ui/scene/solid/space_view.h"
#include "ui/scene/tracks/adjuster_panel.h"
#include "ui/scene/tracks/liner_map.h"
#include "ui/scene/tracks/unrolled_tracks.h"
#include "ui/scene/walk/lesson_plot.h"
#include "ui/scene/walk/stage_strip.h"
#include "ui/scene/walk/student_walk.h"
#include "ui/scene/walk/task_view.h"

#include <QEvent>

#include <algorithm>

namespace lobewright::ui {

Views::Views(TurnCursor& cursor, QWidget* owner)
    : QObject(owner), bands_(new BandsModel(owner)), partNames_(new PartNames(this)) {
    addDrawings(cursor, owner);
    addPlots(cursor, owner);
    addStudies(owner);
    addLoads(cursor, owner);
    addLobes(cursor, owner);
    addLists(cursor, owner);
    addUnknowns(owner);
    addReviews(owner);
    for (const View& view : views_)
        putBandsBehind(view.widget);
    connect(&bands_->behind(), &BandsBehind::shownChanged, this, [this] {
        if (bands_->behind().isShown() && solution_)
            bands_->showSolution(solution_);
    });
}

void Views::putBandsBehind(QWidget* view) {
    if (auto* turn = qobject_cast<TurnPlot*>(view))
        turn->setBands(bands_->behind());
    else if (auto* curve = qobject_cast<TorqueCurve*>(view))
        curve->setBands(bands_->behind());
    else if (auto* comparison = qobject_cast<ComparisonPane*>(view))
        comparison->setBands(bands_->behind());
}

template <class Widget>
Views::View& Views::add(const char* key, const QString& title, Widget* widget) {
    View view;
    view.key = QString::fromLatin1(key);
    view.title = title;
    view.widget = widget;
    view.showSolution = [widget](const SolutionPointer& s) { widget->showSolution(s); };
    if constexpr (requires(const SolutionPointer& s) { widget->showBaseline(s); })
        view.showBaseline = [widget](const SolutionPointer& s) { widget->showBaseline(s); };
    if constexpr (requires(const GeometryPointer& g) { widget->showGeometry(g); })
        view.showGeometry = [widget](const GeometryPointer& g) { widget->showGeometry(g); };
    if constexpr (requires(QMenu & menu) { widget->addOptions(menu); })
        view.addOptions = [widget](QMenu& menu) { widget->addOptions(menu); };
    else if constexpr (std::is_base_of_v<TurnView, Widget>)
        view.addOptions = [widget, title](QMenu& menu) { addPictureActions(menu, *widget, title); };
    if constexpr (requires { &Widget::edited; }) {
        connect(widget, &Widget::edited, this, [this, widget](const Edit& edit) {
            editedLast_ = widget;
            Q_EMIT edited(edit);
        });
        connect(widget, &Widget::editFinished, this, &Views::editFinished);
    }
    if constexpr (requires { &Widget::fieldWanted; })
        connect(widget, &Widget::fieldWanted, this, &Views::fieldWanted);
    widget->hide();
    widget->setObjectName(view.key);
    widget->installEventFilter(this);
    views_.push_back(std::move(view));
    return views_.back();
}

template <class Widget>
void Views::addKept(const char* key, const QString& title, Widget* widget) {
    View& view = add(key, title, widget);
    view.state = [widget] { return widget->state(); };
    view.restoreState = [widget](const QString& state) { widget->restoreState(state); };
    connect(widget, &Widget::stateChanged, this, &Views::stateChanged);
}

template <class Plot>
void Views::addPlot(const char* key, Plot* plot) {
    addKept(key, plot->title(), plot);
}

void Views::addDrawings(TurnCursor& cursor, QWidget* owner) {
    auto* section = new SectionView(cursor, owner);
    auto* tracks = new UnrolledTracks(cursor, owner);
    auto* circle = new CylinderCircle(cursor, owner);
    add("section", tr("Section through a cylinder"), section);
    add("tracks", tr("Tracks unrolled"), tracks);
    add("circle", tr("Cylinder circle"), circle);
    connect(circle, &CylinderCircle::cylinderChosen, section, &SectionView::setCylinder);
    connect(circle, &CylinderCircle::cylinderChosen, tracks, &UnrolledTracks::setCylinder);
    add("liner", tr("Liner map"), new LinerMap(cursor, owner));
    auto* space = new SpaceView(cursor, owner);
    add("solid", tr("3D view"), space);
    section->setPartNames(*partNames_);
    space->setPartNames(*partNames_);
    add("clock", tr("Cam and crank synchronised"), new ClockView(cursor, owner));
    add("adjuster", tr("Adjuster"), new AdjusterPanel(owner));
    walk_ = new StudentWalk(cursor, owner);
    add("walk", tr("Walk through a cycle"), walk_);
    connect(circle, &CylinderCircle::cylinderChosen, walk_, &StudentWalk::setCylinder);
    addLessons(cursor, owner);
}

void Views::addLessons(TurnCursor& cursor, QWidget* owner) {
    auto* circle = dynamic_cast<CylinderCircle*>(find("circle")->widget);
    auto* stages = new StageStrip(cursor, owner);
    auto* plot = new LessonPlot(cursor, owner);
    tasks_ = new TaskView(cursor, owner);
    add("stages", tr("Stages of the cycle"), stages);
    add("lesson-plot", tr("Plot of the stage"), plot);
    add("tasks", tr("Tasks"), tasks_);
    connect(circle, &CylinderCircle::cylinderChosen, stages, &StageStrip::setCylinder);
    connect(stages, &StageStrip::stageChosen, walk_, &StudentWalk::goTo);
    connect(walk_, &StudentWalk::tasksWanted, this,
            [this] { Q_EMIT arrangementWanted(QStringLiteral("tasks")); });
    // While the shaft plays, the plot stays: three in a second would only flicker.
    connect(stages, &StageStrip::presentChanged, plot, [stages, plot, &cursor](int index) {
        if (index >= 0 && !cursor.isPlaying())
            plot->setEvent(stages->stage(index).event);
    });
}

void Views::addPlots(TurnCursor& cursor, QWidget* owner) {
    position_ = new PositionPlot(cursor, owner);
    addPlot("position", position_);
    addPlot("ports", new PortPlot(cursor, owner));
    add("timing", tr("Timing diagram"), new TimingCircle(cursor, owner));
    addPlot("torque", new TorquePlot(cursor, owner));
    addPlot("stress", new StressPlot(cursor, owner));
    const auto channels = [&](const char* key, const QString& title, const QStringList& names) {
        addPlot(key, new ChannelPlot(cursor, title, names, owner));
    };
    channels("gas", tr("Gas in the cylinder"),
             {QStringLiteral("pressure_bar"), QStringLiteral("temperature_K")});
    add("pressure-volume", tr("p–V diagram"), new PressureVolumePlot(cursor, owner));
    channels("forces", tr("Contact and side forces"),
             {QStringLiteral("contact_force_inlet_N"), QStringLiteral("contact_force_exhaust_N")});
    channels("balance", tr("Shaking force"), {QStringLiteral("shaking_force_N")});
    channels(
        "chosen", tr("Custom plot"),
        {QStringLiteral("pressure_angle_inlet_deg"), QStringLiteral("pressure_angle_exhaust_deg")});
}

void Views::addStudies(QWidget* owner) {
    torqueCurve_ = new TorqueCurve(owner);
    addPlot("torque-curve", torqueCurve_);
    connect(torqueCurve_, &TorqueCurve::scheduleWanted, this, &Views::scheduleWanted);
    addPlot("load-map", new LoadMapPlot(owner));
    addPlot("phase-map", new PhasePlot(owner));
    auto* supply = new SupplyStrip(owner);
    add("supply", tr("Air path"), supply);
    connect(supply, &SupplyStrip::wheelWanted, this, &Views::wheelWanted);
    auto* compressor = new CompressorPlot(owner);
    add("compressor", compressor->title(), compressor);
    connect(compressor, &CompressorPlot::wheelWanted, this, &Views::wheelWanted);
    add("energy", tr("Energy and friction"), new EnergyAudit(owner));
}

void Views::addLoads(TurnCursor& cursor, QWidget* owner) {
    addKept("contact-map", tr("Contact over angle and width"), new ContactMapPlot(cursor, owner));
    addPlot("lever", new LeverPlot(cursor, owner));
    add("free-body", tr("Forces on the pistons"), new FreeBody(cursor, owner));
    addPlot("bearings", new BearingPlot(cursor, owner));
    add("orders", tr("Force and torque orders"), new OrderBars(owner));
}

void Views::addLobes(TurnCursor& cursor, QWidget* owner) {
    using Quantity = WidthPlot::Quantity;
    const std::pair<const char*, Quantity> quantities[] = {
        {"width-angle", Quantity::pressureAngle},
        {"width-radius", Quantity::relativeRadius},
        {"width-margin", Quantity::undercutMargin},
        {"width-slip", Quantity::slip},
        {"width-pressure-slip", Quantity::pressureSlip}};
    for (const auto& [key, quantity] : quantities)
        addPlot(key, new WidthPlot(cursor, quantity, owner));
    add("laws", tr("Motion laws side by side"), new LawPane(owner));
    add("factors", tr("Factors and junctions"), new LobeFactors(cursor, owner));
}

void Views::addLists(TurnCursor& cursor, QWidget* owner) {
    auto* limits = new LimitsList(owner);
    add("limits", tr("Limits"), limits);
    connect(limits, &LimitsList::angleWanted, &cursor, &TurnCursor::setAngle);
    add("figures", tr("Results"), new FiguresView(owner));
}

void Views::addReviews(QWidget* owner) {
    auto* comparison = new ComparisonPane(owner);
    auto* claims = new ClaimsPane(owner);
    claims_ = claims;
    connect(bands_, &BandsModel::changed, this, &Views::giveBandsToClaims);
    addKept("comparison", tr("Comparison with crank engines"), comparison);
    addKept("claims", tr("Claims check"), claims);
    connect(claims, &ClaimsPane::claimsChanged, comparison, [comparison](const study::Claims& all) {
        comparison->showClaims(study::claimedPoints(all));
    });
    connect(claims, &ClaimsPane::claimsChanged, bands_, &BandsModel::showClaims);
    connect(claims, &ClaimsPane::figureWanted, this, &Views::workingWanted);
    connect(claims, &ClaimsPane::resultWanted, this, [this](const QString& name) {
        bands_->setResult(name.toStdString());
        Q_EMIT arrangementWanted(QStringLiteral("unknowns"));
    });
}

/// Those of the engine that is open, as soon as they are whole.
void Views::giveBandsToClaims() {
    const auto now = solution_ && bands_->isOfUnknownsOf(solution_->design)
                         ? bands_->ensemble()
                         : BandsModel::EnsemblePointer();
    if (now == claimsBands_)
        return;
    claimsBands_ = now;
    claims_->showBands(now ? std::optional(unknowns::bandsByName(*now)) : std::nullopt);
}

void Views::addUnknowns(QWidget* owner) {
    add("ranges", tr("What is not known"), new RangesView(*bands_, owner));
    add("bands", tr("Torque and power as bands"), new BandsPlot(*bands_, owner));
    addKept("decides", tr("What decides this"), new DecidesView(*bands_, owner));
}

const Views::View* Views::find(const QString& key) const {
    const auto found = std::ranges::find(views_, key, &View::key);
    return found == views_.end() ? nullptr : &*found;
}

void Views::startAnew() {
    walk_->reset();
    tasks_->reset();
}

void Views::showDesign(const design::Design& design) {
    torqueCurve_->showDesign(design);
}

void Views::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    geometry_.reset();
    for (const View& view : views_) {
        Stale& stale = stale_[view.widget];
        stale.solution = true;
        stale.geometry = false;
        if (view.widget->isVisible())
            refresh(view);
    }
    if (bands_->behind().isShown())
        bands_->showSolution(solution);
    giveBandsToClaims();
}

void Views::showBaseline(const SolutionPointer& baseline) {
    baseline_ = baseline;
    for (const View& view : views_) {
        stale_[view.widget].baseline = true;
        if (view.widget->isVisible())
            refresh(view);
    }
}

void Views::showGeometry(const GeometryPointer& geometry) {
    geometry_ = geometry;
    for (const View& view : views_) {
        stale_[view.widget].geometry = true;
        if (view.widget->isVisible())
            refresh(view);
    }
}

void Views::showGeometryWhereEdited(const GeometryPointer& geometry) {
    geometry_ = geometry;
    for (const View& view : views_) {
        stale_[view.widget].geometry = true;
        if (view.widget == editedLast_ && view.widget->isVisible())
            refresh(view);
    }
}

void Views::refresh(const View& view) {
    Stale& stale = stale_[view.widget];
    if (std::exchange(stale.baseline, false) && view.showBaseline)
        view.showBaseline(baseline_);
    if (std::exchange(stale.solution, false) && solution_)
        view.showSolution(solution_);
    if (std::exchange(stale.geometry, false) && geometry_ && view.showGeometry)
        view.showGeometry(geometry_);
}

bool Views::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Show && !event->spontaneous()) {
        const auto view = std::ranges::find(views_, watched, &View::widget);
        if (view != views_.end())
            refresh(*view);
    }
    return QObject::eventFilter(watched, event);
}

} // namespace lobewright::ui
