#pragma once

#include "ui/window/file_conflict.h"

#include <QObject>

#include <functional>

class QMenu;

namespace lobewright::ui {

class RecentFiles;
class Safekeeping;
struct Session;

/// Opens, saves and exports the design of a window; asks before anything unsaved is given up.
class DesignFiles : public QObject {
    Q_OBJECT

  public:
    /// `asksQuestions` false: nothing is asked on closing or opening (pictures).
    DesignFiles(Session& session, Safekeeping& safekeeping, bool asksQuestions);

    /// Opens a file; the present design stays if it cannot be used.
    bool open(const QString& file);
    void openSample(int index);
    /// What a crash left behind if the person wants it back; else the file, if there is one that
    /// can be used; else the design of last time, if that is preferred; else the first sample.
    void openSomething(const QString& file);
    bool saveTo(const QString& file);
    /// False: the person wants to keep what is unsaved.
    bool mayDiscard();

    void addOpening(QMenu& menu);
    void addSaving(QMenu& menu);

  Q_SIGNALS:
    void opened();
    void sampleOpened();
    void saving(); ///< what is being typed should be entered now
    void saved();
    void reloaded();

  private:
    void askForFile();
    bool save();
    bool saveAs();
    bool goOnWith(FileConflict::Answer answer);
    bool write(const QString& file);
    void noteFile(const QString& file);
    void askForResultsFolder();
    void exportResults(const QString& folder);

    Session& session_;
    Safekeeping& safekeeping_;
    RecentFiles* recent_;
    bool asksQuestions_;
};

/// Which files a dialog offers as designs.
QString designFilter();
/// An entry for each sample, with its notes; `choose` gets its place in samples().
void addSamples(QMenu& menu, const std::function<void(int)>& choose);

} // namespace lobewright::ui
