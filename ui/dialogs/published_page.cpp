#include "ui/dialogs/published_page.h"

#include "core/claims/claims_check.h"
#include "core/claims/claims_keys.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/claims/claims_form.h"

#include <QLabel>
#include <QScrollArea>

namespace lobewright::ui {

PublishedPage::PublishedPage(QWidget* parent)
    : QWidget(parent), form_(new ClaimsForm(this, ClaimsForm::Extent::draft)),
      conflicts_(new QLabel(this)) {
    auto* hint = new QLabel(tr("Fill in what is published, each with its unit as printed (40 hp, "
                               "73 cu in); leave the rest empty."),
                            this);
    hint->setWordWrap(true);
    auto* scroll = new QScrollArea(this);
    makeScroll(*scroll, form_);
    conflicts_->setObjectName(QStringLiteral("conflicts"));
    conflicts_->setWordWrap(true);
    conflicts_->hide();
    columnOf(this, {0, 0, 0, 0}, -1, {hint, {scroll, 1}, conflicts_});
    connect(form_, &ClaimsForm::edited, this, &PublishedPage::setClaims);
    connect(conflicts_, &QLabel::linkActivated, this, [this](const QString& path) {
        setClaims(study::without(form_->claims(), path.toStdString()));
    });
}

void PublishedPage::setClaims(const study::Claims& claims) {
    form_->show(claims);
    showConflicts();
    Q_EMIT changed();
}

const study::Claims& PublishedPage::claims() const {
    return form_->claims();
}

std::optional<draft::Brief> PublishedPage::brief() const {
    draft::Brief brief = draft::briefOf(form_->claims());
    draft::Brief nothing;
    nothing.title = brief.title;
    nothing.source = brief.source;
    return brief == nothing ? std::nullopt : std::optional(std::move(brief));
}

void PublishedPage::showConflicts() {
    QStringList lines;
    for (const auto& conflict : study::checkClaims(form_->claims()).conflicts) {
        QStringList links;
        for (const std::string& path : conflict.paths) {
            if (draft::isFollowed(path)) {
                links << QStringLiteral("<a href=\"%1\">%2</a>")
                             .arg(QString::fromStdString(path),
                                  coreText(study::claimLabel(path)).toHtmlEscaped());
            }
        }
        lines << QStringLiteral("<span style=\"color:%1\">%2</span> %3")
                     .arg(Palette::of(*this).warning.name(),
                          coreText(conflict.message).toHtmlEscaped(),
                          tr("Leave out: %1").arg(links.join(QStringLiteral(", "))));
    }
    conflicts_->setText(lines.join(QStringLiteral("<br>")));
    conflicts_->setVisible(!lines.isEmpty());
}

} // namespace lobewright::ui
