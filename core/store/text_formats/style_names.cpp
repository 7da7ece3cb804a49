#include "core/store/text_formats/style_names.h"

namespace coutil::text_formats {

const std::map<std::string, BlockKind>& blockNames() {
    static const std::map<std::string, BlockKind> names{{"corset", BlockKind::corset}};
    return names;
}

const std::map<std::string, FrontClosure>& frontNames() {
    static const std::map<std::string, FrontClosure> names{
        {"busk", FrontClosure::busk}, {"fold", FrontClosure::fold}, {"seam", FrontClosure::seam}};
    return names;
}

const std::map<std::string, TopShape>& topShapeNames() {
    static const std::map<std::string, TopShape> names{{"straight", TopShape::straight},
                                                       {"curved", TopShape::curved},
                                                       {"sweetheart", TopShape::sweetheart},
                                                       {"pointed", TopShape::pointed}};
    return names;
}

const std::map<std::string, BottomShape>& bottomShapeNames() {
    static const std::map<std::string, BottomShape> names{{"straight", BottomShape::straight},
                                                          {"curved", BottomShape::curved},
                                                          {"pointed", BottomShape::pointed},
                                                          {"dipped", BottomShape::dipped}};
    return names;
}

}  // namespace coutil::text_formats
