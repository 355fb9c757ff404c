#pragma once

#include "ui/workspace/document.h"

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
    /// What a crash left behind.
    struct Left {
        QString file;     ///< the copy
        QString name;     ///< of the document
        QString original; ///< file it came from, may be empty
        QDateTime when;
    };

    Autosave(Document& document, QString folder, QObject* parent = nullptr);
    ~Autosave() override;

    /// Copies of programs that no longer run, newest first.
    std::vector<Left> leftovers() const;
    static void discard(const Left& left);

    void setInterval(std::chrono::seconds interval) { timer_.start(interval); }
    std::chrono::milliseconds interval() const { return timer_.intervalAsDuration(); }
    /// Writes now if something is unsaved, removes the copy if nothing is.
    void update();
    const QString& file() const { return file_; }

  private:
    Document& document_;
    QString folder_, file_;
    std::unique_ptr<QLockFile> lock_;
    QTimer timer_;
    quint64 written_ = 0; ///< revision of the copy
};

} // namespace lobewright::ui
