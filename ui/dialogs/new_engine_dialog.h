#pragma once

#include "core/design/design.h"

#include <QDialog>

#include <optional>

class QListWidget;
class QPushButton;
class QStackedWidget;
class QTabBar;

namespace lobewright::study {
struct Claims;
}

namespace lobewright::ui {

class DraftView;
class DutyPage;
class PublishedPage;

/// A new engine from what is known: published figures, a duty, a picture, a sample, or the smallest
/// engine that is valid. Figures and duties are completed by the rules of the draft.
class NewEngineDialog : public QDialog {
    Q_OBJECT

  public:
    enum class Way { published, duty, picture, sample, blank };

    explicit NewEngineDialog(QWidget* parent = nullptr);

    /// Forgets what was chosen the last time; what was typed stays.
    void begin();
    void choose(Way way);
    PublishedPage& published() { return *published_; }
    DutyPage& duty() { return *duty_; }
    DraftView& drafts() { return *drafts_; }

    /// The engine to open once the dialog is accepted, and its name.
    const std::optional<design::Design>& chosen() const { return chosen_; }
    const QString& name() const { return name_; }
    /// Whether a picture is to be measured into it at once.
    bool measuresPicture() const { return measuresPicture_; }
    /// The published figures that it was made from; null: from something else.
    const study::Claims* publishedFigures() const;
    /// Index of the sample to open instead; −1: none.
    int sample() const { return sample_; }

  private:
    QWidget* buildSamples();
    QWidget* buildSmallest(const QString& text);
    void wayChanged();
    void follow();
    void showSample(int index);
    void take();

    QTabBar* ways_;
    QStackedWidget* pages_;
    PublishedPage* published_;
    DutyPage* duty_;
    DraftView* drafts_;
    QListWidget* samples_ = nullptr;
    QWidget* sampleAbout_ = nullptr;
    QPushButton* open_ = nullptr;
    std::optional<design::Design> blank_, chosen_;
    bool isFromPublished_ = false;
    QString name_;
    int sample_ = -1;
    bool measuresPicture_ = false;
};

} // namespace lobewright::ui
