package drawwell.desktop

import drawwell.ui.ReachContract

class DesktopReachTest : ReachContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
