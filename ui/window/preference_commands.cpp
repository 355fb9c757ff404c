#include "ui/window/preference_commands.h"

#include "ui/base/look.h"
#include "ui/base/units.h"
#include "ui/document/autosave.h"
#include "ui/window/playback_bar.h"
#include "ui/window/preferences.h"
#include "ui/window/session.h"

#include <QActionGroup>
#include <QMainWindow>
#include <QMenu>

namespace lobewright::ui {

namespace {

QAction* addChoice(QMenu& menu, QActionGroup& group, const QString& title, const QVariant& data) {
    QAction* action = menu.addAction(title);
    action->setCheckable(true);
    action->setData(data);
    group.addAction(action);
    return action;
}

void check(const QActionGroup& group, const QVariant& data) {
    for (QAction* action : group.actions())
        action->setChecked(action->data() == data);
}

} // namespace

PreferenceCommands::PreferenceCommands(Session& session, Autosave& autosave, PlaybackBar& playback)
    : QObject(&session.window), session_(session), autosave_(autosave), playback_(playback),
      units_(new QActionGroup(this)), themes_(new QActionGroup(this)) {}

void PreferenceCommands::addChoices(QMenu& menu) {
    addUnits(*menu.addMenu(tr("U&nits")));
    addThemes(*menu.addMenu(tr("&Theme")));
}

void PreferenceCommands::addUnits(QMenu& menu) {
    const auto add = [&](UnitSystem system, const QString& title) {
        QAction* action = addChoice(menu, *units_, title, static_cast<int>(system));
        connect(action, &QAction::triggered, this,
                [system] { Units::instance().setSystem(system); });
        return action;
    };
    add(UnitSystem::metric, tr("&Metric"));
    add(UnitSystem::inch, tr("&Inch"))
        ->setStatusTip(
            tr("Inches, psi, lb·ft and °F wherever numbers are shown or typed; files stay metric"));
    const auto showChosen = [this] {
        check(*units_, static_cast<int>(Units::instance().system()));
    };
    connect(&Units::instance(), &Units::changed, this, showChosen);
    showChosen();
}

void PreferenceCommands::addThemes(QMenu& menu) {
    const std::pair<Theme, QString> listed[] = {{Theme::system, tr("As the &system")},
                                                {Theme::light, tr("&Light")},
                                                {Theme::dark, tr("&Dark")}};
    for (const auto& [theme, title] : listed) {
        const QString name = nameOf(theme);
        connect(addChoice(menu, *themes_, title, name), &QAction::triggered, this,
                [this, name] { setTheme(name); });
    }
}

void PreferenceCommands::addDialog(QMenu& menu) {
    menu.addAction(tr("&Preferences…"), QKeySequence(tr("Ctrl+,")), this, &PreferenceCommands::edit)
        ->setMenuRole(QAction::PreferencesRole);
}

void PreferenceCommands::setTheme(const QString& name) {
    Preferences preferences = Preferences::load();
    preferences.theme = themeNamed(name);
    preferences.save();
    take(preferences);
}

void PreferenceCommands::take(const Preferences& preferences) {
    applyToProgram(preferences);
    apply(preferences);
}

void PreferenceCommands::apply(const Preferences& preferences) {
    check(*themes_, nameOf(preferences.theme));
    autosave_.setInterval(std::chrono::seconds(preferences.autosaveInterval));
    playback_.setUsualFactor(preferences.slowMotion);
}

void PreferenceCommands::edit() {
    PreferencesDialog dialog(&session_.window);
    connect(&dialog, &PreferencesDialog::changed, this, &PreferenceCommands::take);
    dialog.exec();
}

} // namespace lobewright::ui
