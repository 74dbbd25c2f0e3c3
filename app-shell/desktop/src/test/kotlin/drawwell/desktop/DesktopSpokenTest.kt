package drawwell.desktop

import drawwell.ui.SpokenContract

class DesktopSpokenTest : SpokenContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
