#include "ui/benches/fit_photo_part.h"

#include <QDragEnterEvent>
#include <QGridLayout>
#include <QMimeData>
#include <QPixmap>
#include <QPushButton>
#include <QToolButton>
#include <QUrl>
#include <QVBoxLayout>

#include "ui/benches/card_text.h"
#include "ui/benches/fit_photo.h"

namespace coutil {

namespace {

constexpr int kPreviewPx = 96;
constexpr int kPreviewsInARow = 3;

QStringList picturesIn(const QMimeData& data) {
    QStringList files;
    for (const QUrl& url : data.urls())
        if (url.isLocalFile() && isPictureFile(url.toLocalFile())) files << url.toLocalFile();
    return files;
}

}  // namespace

FitPhotoPart::FitPhotoPart(QWidget* parent) : QWidget(parent), grid_(new QGridLayout) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    grid_->setColumnStretch(kPreviewsInARow, 1);
    column->addLayout(grid_);
    column->addWidget(quietText(
        tr("JPEG or PNG. A copy is kept in the folio, without the place it was taken at.")));
    auto* attach = new QPushButton(tr("Attach photos…"));
    attach->setObjectName(QStringLiteral("attachPhotos"));
    column->addWidget(attach, 0, Qt::AlignLeft);
    connect(attach, &QPushButton::clicked, this, &FitPhotoPart::filesWanted);
    setAcceptDrops(true);
}

void FitPhotoPart::showPhotos(const Folio& folio, const std::vector<std::string>& ids) {
    if (ids == ids_) return;
    ids_ = ids;
    qDeleteAll(buttons_);
    buttons_.clear();
    for (const std::string& id : ids) {
        const Photo* photo = findPhoto(folio, id);
        if (photo == nullptr) continue;
        auto* button = new QToolButton;
        const auto number = static_cast<int>(buttons_.size());
        button->setObjectName(QStringLiteral("photo%1").arg(number + 1));
        button->setIcon(QPixmap::fromImage(pictureOf(*photo, 2 * kPreviewPx)));
        button->setIconSize(QSize(kPreviewPx, kPreviewPx));
        button->setFocusPolicy(Qt::StrongFocus);
        button->setAccessibleName(tr("Photo %1, show it large").arg(number + 1));
        button->setToolTip(QString::fromStdString(photo->caption));
        connect(button, &QToolButton::clicked, this, [this, id] { emit shown(id); });
        grid_->addWidget(button, number / kPreviewsInARow, number % kPreviewsInARow);
        buttons_.push_back(button);
    }
}

void FitPhotoPart::dragEnterEvent(QDragEnterEvent* event) {
    if (!picturesIn(*event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void FitPhotoPart::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    emit filesDropped(picturesIn(*event->mimeData()));
}

}  // namespace coutil
