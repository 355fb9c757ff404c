#pragma once

#include <QObject>

class QActionGroup;
class QMenu;

namespace lobewright::ui {

class Autosave;
class PlaybackBar;
struct Preferences;
struct Session;

/// Units, theme and everything else that a person prefers, in menus and in their dialog.
class PreferenceCommands : public QObject {
    Q_OBJECT

  public:
    PreferenceCommands(Session& session, Autosave& autosave, PlaybackBar& playback);

    /// Menus for units and theme.
    void addChoices(QMenu& menu);
    void addDialog(QMenu& menu);
    /// Takes up what concerns this window, and shows which are chosen.
    void apply(const Preferences& preferences);
    void edit();
    void setTheme(const QString& name);

  private:
    void addUnits(QMenu& menu);
    void addThemes(QMenu& menu);
    void take(const Preferences& preferences);

    Session& session_;
    Autosave& autosave_;
    PlaybackBar& playback_;
    QActionGroup *units_, *themes_;
};

} // namespace lobewright::ui
