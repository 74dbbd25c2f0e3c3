package drawwell.desktop

import drawwell.ui.TonightContract

class DesktopTonightTest : TonightContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
