#pragma once

#include <QDialog>

namespace coutil {

// The sheet of keys, under F1 and ?. Not modal: it may lie beside the window while one learns.
class KeySheet : public QDialog {
    Q_OBJECT

  public:
    explicit KeySheet(QWidget* parent = nullptr);
};

}  // namespace coutil
