package drawwell.desktop

import drawwell.ui.LifeContract

class DesktopLifeTest : LifeContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
