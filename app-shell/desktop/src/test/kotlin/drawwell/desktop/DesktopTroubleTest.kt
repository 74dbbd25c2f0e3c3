package drawwell.desktop

import drawwell.ui.TroubleContract

class DesktopTroubleTest : TroubleContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
