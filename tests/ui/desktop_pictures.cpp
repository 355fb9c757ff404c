// Pictures of the main views, for the README and for looking at them:
//   xvfb-run -s "-screen 0 2560x1440x24" desktop_pictures --screenshot DIR [SAMPLE.json]
//   LANGUAGE=de …             in German
//   … --panels DIR            tabs and dialogs
//   … --sights DIR            the arrangements as people see them who miss one of three primaries
//   … --views DIR [SAMPLE]    every view by itself
#include "core/editing/knot_edits.h"
#include "core/motion/knot_fit.h"
#include "core/units.h"
#include "tests/ui/sight.h"
#include "ui/base/language.h"
#include "ui/base/look.h"
#include "ui/claims/claims_pane.h"
#include "ui/dialogs/knot_fit_dialog.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/snapshots_panel.h"
#include "ui/plots/study/comparison_pane.h"
#include "ui/plots/turn/position_plot.h"
#include "ui/scene/walk/stage_strip.h"
#include "ui/scene/walk/student_walk.h"
#include "ui/window/arrangement.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QSettings>
#include <QStatusBar>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>

#include <cstdio>

using namespace lobewright;
using namespace lobewright::ui;

namespace {

bool waitUntilSolved(MainWindow& window) {
    return QTest::qWaitFor([&] { return window.solution() && !window.solver().isBusy(); }, 60000);
}

/// Shows the window on a file, or on the first sample, and makes the folder for its pictures.
bool openedAndSolved(MainWindow& window, const QString& folder, const QString& file = {}) {
    QDir().mkpath(folder);
    window.show();
    window.openSomething();
    if (!file.isEmpty() && !window.openFile(file))
        return false;
    const bool isSolved = waitUntilSolved(window);
    if (!isSolved)
        std::fputs("the design was not solved\n", stderr);
    return isSolved;
}

/// A baseline that differs, as a person comparing two designs would have it.
void compareWithEarlierPorts(MainWindow& window) {
    window.keepBaseline();
    Edit edit;
    edit.changes = {{"/mechanism/exhaust_lead_deg", 9.0}};
    window.document().apply(edit);
    waitUntilSolved(window);
}

/// Claims filled in, and laid over the torque curve of the design.
void reviewClaims(MainWindow& window) {
    auto& claims = dynamic_cast<ClaimsPane&>(*window.views().find("claims")->widget);
    auto& comparison = dynamic_cast<ComparisonPane&>(*window.views().find("comparison")->widget);
    claims.fillInExample();
    comparison.setQuantity(ComparedQuantity::torqueCurve);
}

bool waitUntilCompared(MainWindow& window) {
    auto& comparison = dynamic_cast<ComparisonPane&>(*window.views().find("comparison")->widget);
    return QTest::qWaitFor([&] { return !comparison.isBusy(); }, 300000);
}

/// The lobe maker on a track of knots with its acceleration laid over the lift.
int pictureKnots(MainWindow& window, const QString& folder) {
    const auto curve = motion::LiftCurve::make(window.document().design().tracks.inlet);
    window.document().apply(editing::knotsEdit(window.document().design(), End::inlet,
                                               motion::fitKnotCount(*curve, 12).value()));
    dynamic_cast<PositionPlot&>(*window.views().find("position")->widget)
        .setOverlay(PositionPlot::Overlay::acceleration);
    if (!waitUntilSolved(window))
        return 1;
    for (const char* theme : {"light", "dark"}) {
        window.setTheme(QString::fromLatin1(theme));
        window.resize(1280, 800);
        window.arrange(QStringLiteral("lobes"));
        QTest::qWait(600);
        if (!window.grab().save(
                QStringLiteral("%1/knots-%2-1280x800.png").arg(folder, QLatin1String(theme))))
            return 1;
        KnotFitDialog dialog(window.document(), End::inlet, &window);
        dialog.QWidget::show();
        QTest::qWait(300);
        if (!dialog.grab().save(
                QStringLiteral("%1/knots-dialog-%2.png").arg(folder, QLatin1String(theme))))
            return 1;
    }
    return 0;
}

/// The tabs beside the panes that no arrangement shows, at the small size and in both themes.
int takePanels(const QString& folder) {
    const QTemporaryDir recovery;
    MainWindow window({recovery.path(), false});
    if (!openedAndSolved(window, folder))
        return 1;
    Q_EMIT window.snapshots().taken(QStringLiteral("As drawn, long dwell"));
    Q_EMIT window.snapshots().compareWanted(0);
    window.document().apply({QStringLiteral("bore"), {{"/mechanism/bore_mm", 60.0}}, {}, {}});
    Q_EMIT window.snapshots().taken(QStringLiteral("Wider bore"));
    for (const char* theme : {"light", "dark"}) {
        window.setTheme(QString::fromLatin1(theme));
        window.arrange(QStringLiteral("designer"));
        auto* side = window.findChild<QTabWidget*>();
        side->setCurrentWidget(&window.snapshots());
        QTest::qWait(500);
        if (!window.grab().save(
                QStringLiteral("%1/snapshots-%2.png").arg(folder, QLatin1String(theme))))
            return 1;
        Q_EMIT window.figures().workingWanted(QStringLiteral("delivery_ratio"));
        QTest::qWait(300);
        if (!window.grab().save(
                QStringLiteral("%1/working-%2.png").arg(folder, QLatin1String(theme))))
            return 1;
    }
    return pictureKnots(window, folder);
}

/// Every arrangement in both themes, seen with protanopia, deuteranopia and tritanopia.
int takeSights(const QString& folder) {
    const QTemporaryDir recovery;
    MainWindow window({recovery.path(), false});
    if (!openedAndSolved(window, folder))
        return 1;
    compareWithEarlierPorts(window);
    window.resize(1280, 800);
    for (const char* theme : {"light", "dark"}) {
        window.setTheme(QString::fromLatin1(theme));
        for (const Arrangement& arrangement : arrangements()) {
            window.arrange(arrangement.key);
            QTest::qWait(600);
            if (!waitUntilCompared(window))
                return 1;
            const QImage picture = window.grab().toImage();
            for (const test::Sight& sight : test::sights()) {
                if (!test::seenBy(sight, picture)
                         .save(QStringLiteral("%1/%2-%3-%4.png")
                                   .arg(folder, arrangement.key, QLatin1String(theme),
                                        QLatin1String(sight.name))))
                    return 1;
            }
        }
    }
    return 0;
}

/// As it looks when nothing of it changes any more: studies compute while they are seen.
QPixmap settled(QWidget& view) {
    QPixmap picture = view.grab();
    for (int i = 0; i < 60; ++i) {
        QTest::qWait(700);
        const QPixmap later = view.grab();
        if (later.toImage() == picture.toImage())
            break;
        picture = later;
    }
    return picture;
}

/// Every view at the size of a pane, with a baseline, in both themes.
int takeViews(const QString& folder, const QString& file) {
    const QTemporaryDir recovery;
    MainWindow window({recovery.path(), false});
    if (!openedAndSolved(window, folder, file))
        return 1;
    compareWithEarlierPorts(window);
    for (const char* theme : {"light", "dark"}) {
        window.setTheme(QString::fromLatin1(theme));
        for (const Views::View& view : window.views().all()) {
            view.widget->setParent(&window);
            view.widget->setGeometry(0, 0, 640, 340);
            view.widget->show();
            view.widget->raise();
            QTest::qWait(500);
            if (!waitUntilCompared(window) ||
                !settled(*view.widget)
                     .save(QStringLiteral("%1/%2-%3.png")
                               .arg(folder, view.key, QLatin1String(theme))))
                return 1;
            view.widget->hide();
        }
    }
    return 0;
}

/// The walk where the shaft is pushed hardest, with its formula and question.
void tellHardestPush(MainWindow& window) {
    auto& walk = dynamic_cast<StudentWalk&>(*window.views().find("walk")->widget);
    const auto& stages = dynamic_cast<StageStrip&>(*window.views().find("stages")->widget);
    walk.setTravelTime(0.0);
    for (int i = 0; i < stages.stages(); ++i) {
        if (stages.stage(i).event == WalkEvent::hardestPush)
            walk.goTo(i);
    }
}

int takePictures(const QString& folder, const QString& file) {
    const QTemporaryDir recovery;
    MainWindow window({recovery.path(), false});
    if (!openedAndSolved(window, folder, file))
        return 1;
    reviewClaims(window);
    for (const bool compared : {false, true}) {
        if (compared)
            compareWithEarlierPorts(window);
        for (const char* theme : {"light", "dark"}) {
            window.setTheme(QString::fromLatin1(theme));
            for (const QSize size : {QSize(1280, 800), QSize(2560, 1440)}) {
                window.resize(size);
                for (const Arrangement& arrangement : arrangements()) {
                    window.arrange(arrangement.key);
                    window.cursor().setAngle(62.0 * units::degree);
                    if (arrangement.key == QLatin1String("student"))
                        tellHardestPush(window);
                    QTest::qWait(400);
                    if (!waitUntilCompared(window))
                        return 1;
                    window.statusBar()->clearMessage();
                    QTest::qWait(100);
                    const QString name = QStringLiteral("%1/%2-%3-%4x%5%6.png")
                                             .arg(folder, arrangement.key, QLatin1String(theme))
                                             .arg(size.width())
                                             .arg(size.height())
                                             .arg(compared ? "-baseline" : "");
                    if (!window.grab().save(name))
                        return 1;
                }
            }
        }
    }
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    const QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("Lobewright"));
    QApplication::setApplicationName(QStringLiteral("Pictures"));
    // LANGUAGE=de: the pictures of the German window.
    if (qEnvironmentVariable("LANGUAGE") == QLatin1String("de") &&
        !installLanguage(application, QStringLiteral("de")))
        return 1;
    const QStringList arguments = QApplication::arguments();
    applyLook(application, Theme::light);
    if (arguments.size() == 3 && arguments[1] == QLatin1String("--panels"))
        return takePanels(arguments[2]);
    if (arguments.size() == 3 && arguments[1] == QLatin1String("--sights"))
        return takeSights(arguments[2]);
    if (arguments.size() >= 3 && arguments[1] == QLatin1String("--views"))
        return takeViews(arguments[2], arguments.value(3));
    if (arguments.size() < 3 || arguments[1] != QLatin1String("--screenshot")) {
        std::fputs("usage: desktop_pictures --screenshot DIR [DESIGN] | --panels DIR | "
                   "--sights DIR | --views DIR [DESIGN]\n",
                   stderr);
        return 2;
    }
    return takePictures(arguments[2], arguments.value(3));
}
