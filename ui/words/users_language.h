#pragma once

class QCoreApplication;

namespace coutil {

// Makes the program speak the language of the user's settings (QLocale) as far as it is translated,
// Qt's own words too. The translations live as long as `app`.
void speakUsersLanguage(QCoreApplication& app);

}  // namespace coutil
