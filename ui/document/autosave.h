#pragma once

#include "core/design/design.h"
#include "core/result.h"
#include "ui/document/document.h"

#include <QDateTime>
#include <QLockFile>
#include <QObject>
#include <QTimer>

#include <chrono>
#include <memory>
#include <vector>

namespace lobewright::ui {

/// Keeps a copy of the unsaved design in a folder of the program, so that a crash loses little.
/// Each running program has a file and a lock of its own; a file whose lock nobody holds was left
/// by a crash.
class Autosave : public QObject {
    Q_OBJECT

  public:
    /// What a crash left behind. While it is held here no other program offers it.
    struct Left {
        QString file;      ///< the copy
        QString name;      ///< of the document; may be empty
        QString original;  ///< file it came from, may be empty
        QByteArray digest; ///< of what that file held (FileWatch); may be empty
        QDateTime when;    ///< the copy was written
        std::shared_ptr<QLockFile> lock;
    };

    Autosave(Document& document, QString folder, QObject* parent = nullptr);
    ~Autosave() override;

    /// Copies of programs that no longer run, newest first, readable or not.
    std::vector<Left> leftovers() const;
    static void discard(const Left& left);
    /// Moves a copy that this program cannot read out of the way, into the folder "unread" beside
    /// it; nothing is deleted. Where it is then.
    static QString setAside(const Left& left);

    void setInterval(std::chrono::seconds interval) { timer_.start(interval); }
    std::chrono::milliseconds interval() const { return timer_.intervalAsDuration(); }
    /// Writes now if something is unsaved, removes the copy if nothing is.
    void update();
    const QString& file() const { return file_; }
    /// Why no copies can be kept; absent while they can.
    const std::optional<Problem>& problem() const { return problem_; }

  Q_SIGNALS:
    /// Copies can no longer be kept, or again.
    void problemChanged();

  private:
    void sweep() const;
    void setProblem(std::optional<Problem> problem);

    Document& document_;
    QString folder_, file_;
    std::unique_ptr<QLockFile> lock_;
    std::optional<Problem> problem_;
    QTimer timer_;
    quint64 written_ = 0; ///< revision of the copy
};

} // namespace lobewright::ui
