#pragma once

#include "core/design/design.h"
#include "core/result.h"
#include "ui/document/file_watch.h"
#include "ui/editing/edit.h"

#include <QObject>
#include <QUndoStack>

#include <optional>

namespace lobewright::ui {

/// The design being worked on: its value, its file and its undo steps. Holds a valid design at
/// all times: what breaks a rule is refused and said, never kept.
class Document : public QObject {
    Q_OBJECT

  public:
    enum class Change {
        settled,  ///< a finished edit, undo or redo
        dragging, ///< one of many small steps while a handle is held
        replaced  ///< another design was opened
    };
    Q_ENUM(Change)

    explicit Document(QObject* parent = nullptr);

    const design::Design& design() const { return design_; }
    /// Counts every change of the design; tags background work.
    quint64 revision() const { return revision_; }

    /// File of the design; empty until it is saved for the first time.
    const QString& path() const { return path_; }
    /// File name without its ending, or the name it was started under.
    QString name() const;
    bool isModified() const { return !undoStack_.isClean(); }
    QUndoStack& undoStack() { return undoStack_; }
    bool isDragging() const { return drag_ != 0; }

    /// Reads a file. Every problem when it cannot be used; the present design then stays.
    Problems open(const QString& file);
    /// The same with what was read already; `digest` (FileWatch) of the file before it was read.
    Problems open(const QString& file, Result<design::Design> loaded, const QByteArray& digest);
    /// Takes a design that has no file yet (a sample, a recovered one).
    void start(design::Design design, const QString& name);
    /// As start(), but counts as modified and keeps the file it came from; `digest` is of what that
    /// held (FileWatch), empty: not known.
    void recover(design::Design design, const QString& name, const QString& file,
                 const QByteArray& digest = {});
    /// The problem, if the file cannot be written; the document is then as before.
    std::optional<Problem> save(const QString& file);
    /// Whether the file was changed by somebody else since it was read or written here.
    bool isFileChanged() const { return watch_.isChanged(); }
    /// Digest (FileWatch) of what the file held when it was last read or written here.
    const QByteArray& fileDigest() const { return watch_.known(); }
    /// Takes the design that the file holds by now, as an undo step; the document is then saved.
    void reload(const design::Design& design);
    /// The file holds this design already, if in other bytes: there is nothing to take or lose.
    void acceptFile() { watch_.watch(path_); }

    /// Applies an edit as one undo step. Every rule it breaks, and then nothing is changed.
    Problems apply(const Edit& edit);

  public Q_SLOTS:
    /// The handle is released: later edits are undo steps of their own.
    void finishEdit();

  Q_SIGNALS:
    void designChanged(lobewright::ui::Document::Change change);
    void modifiedChanged(bool modified);
    void pathChanged();
    /// Somebody else wrote to the file.
    void fileChanged();
    /// A handle was released after it had changed the design.
    void editFinished();
    /// An edit was refused.
    void refused(const lobewright::Problems& problems);

  private:
    friend class ChangeDesign;
    void setDesign(const design::Design& design, Change change);
    void endDrag();
    void replace(design::Design design, const QString& file, const QString& name,
                 const QByteArray& digest);

    design::Design design_;
    QString path_, name_;
    FileWatch watch_;
    QUndoStack undoStack_;
    quint64 revision_ = 0;
    quint64 drag_ = 0, lastDrag_ = 0;
    QString dragKey_;
};

} // namespace lobewright::ui
