package drawwell.desktop

import drawwell.ui.RecompositionContract

class DesktopRecompositionTest : RecompositionContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
