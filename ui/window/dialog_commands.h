#pragma once

#include "core/ends.h"

#include <QObject>

class QMenu;

namespace lobewright::ui {

class DesignFiles;
class HintBar;
class SidePanel;
class Views;
struct Session;

/// Everything that is done in a dialog of its own on the design that is open.
class DialogCommands : public QObject {
    Q_OBJECT

  public:
    DialogCommands(Session& session, DesignFiles& files, SidePanel& side, Views& views,
                   HintBar& hint);

    void addNew(QMenu& menu);
    void addExchange(QMenu& menu);
    void addEditing(QMenu& menu);

    void importWheel();
    void turnIntoKnots(End end);
    /// Lets an input follow the speed; empty: the person chooses which.
    void scheduleInput(const QString& input);
    /// Asks which input shall give this figure which value.
    void makeThis(const QString& figure);

  private:
    void newEngine();
    void measurePicture();
    void exportTrack();
    void exportFrames();
    void editOrigin();

    Session& session_;
    DesignFiles& files_;
    SidePanel& side_;
    Views& views_;
    HintBar& hint_;
};

} // namespace lobewright::ui
